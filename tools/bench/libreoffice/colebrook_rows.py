"""Times LibreOffice at recalculating a sheet of native Colebrook formulas, through UNO.

usage: /usr/bin/python3 colebrook_rows.py BOOK.xlsx   (made by ../libreoffice.ts, which also says what each column is)

Prints one JSON object: msRecalculateAll, the shortest of the timed runs, and worst, the greatest relative difference
of any head from the converged solution. Before each run a factor on all viscosities changes, with automatic
calculation off, and after it every head is checked: a run that calculated nothing cannot pass.
"""

import json
import math
import os
import signal
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.connection import NoConnectException

ROWS = 10_000
RUNS = 7
START_SECONDS = 60
GRAVITY = 9.80665
# Six steps from an explicit start come this near; further off, something else was calculated.
GREATEST_DIFFERENCE = 1e-6


def friction_head(flow, bore, roughness, length, viscosity):
    """Darcy-Weisbach with the Colebrook friction factor, iterated until it stands still."""
    velocity = flow / (math.pi / 4 * bore**2)
    reynolds = velocity * bore / viscosity
    root = 7.0
    for _ in range(100):
        following = -2 * math.log10(roughness / bore / 3.7 + 2.51 * root / reynolds)
        if abs(following - root) < 1e-15 * root:
            break
        root = following
    return length / bore * velocity**2 / (2 * GRAVITY) / root**2


def worst_difference(sheet, factor):
    inputs = sheet.getCellRangeByName(f"A2:E{ROWS + 1}").getDataArray()
    heads = sheet.getCellRangeByName(f"I2:I{ROWS + 1}").getDataArray()
    worst = 0.0
    for (flow, bore, roughness, length, viscosity), (head,) in zip(inputs, heads):
        if not isinstance(head, float):
            return math.inf
        expected = friction_head(flow, bore, roughness, length, viscosity * factor)
        worst = max(worst, abs(head / expected - 1))
    return worst


def connect(pipe, office):
    local = uno.getComponentContext()
    resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
    until = time.monotonic() + START_SECONDS
    while time.monotonic() < until:
        if office.poll() is not None:
            raise RuntimeError("LibreOffice ended before it answered")
        try:
            return resolver.resolve(f"uno:pipe,name={pipe};urp;StarOffice.ComponentContext")
        except NoConnectException:
            time.sleep(0.1)
    raise RuntimeError("LibreOffice did not answer")


def measure(book, pipe, office):
    context = connect(pipe, office)
    desktop = context.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", context)
    hidden = PropertyValue()
    hidden.Name, hidden.Value = "Hidden", True
    document = desktop.loadComponentFromURL(Path(book).resolve().as_uri(), "_blank", 0, (hidden,))
    try:
        document.enableAutomaticCalculation(False)
        sheet = document.Sheets.getByIndex(0)
        times, worst = [], 0.0
        for run in range(RUNS):
            factor = 1 + 0.05 * run
            sheet.getCellRangeByName("K1").Value = factor
            start = time.perf_counter()
            document.calculateAll()
            times.append(time.perf_counter() - start)
            worst = max(worst, worst_difference(sheet, factor))
        if worst > GREATEST_DIFFERENCE:
            raise RuntimeError(f"the heads are off by {worst:.1e}, so they were not recalculated")
        return {"msRecalculateAll": min(times) * 1000, "worst": worst}
    finally:
        document.close(True)
        try:
            desktop.terminate()
        except Exception:
            pass  # It ends while it answers.


def main(book):
    with tempfile.TemporaryDirectory(ignore_cleanup_errors=True) as profile:
        pipe = f"colebrook{os.getpid()}"
        office = subprocess.Popen(
            [
                "soffice",
                f"-env:UserInstallation={Path(profile).as_uri()}",
                "--headless",
                "--norestore",
                f"--accept=pipe,name={pipe};urp;",
            ],
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
            start_new_session=True,
        )
        try:
            figures = measure(book, pipe, office)
        finally:
            try:
                office.wait(20)
            except subprocess.TimeoutExpired:
                os.killpg(office.pid, signal.SIGKILL)
                office.wait()
    print(json.dumps(figures))


main(sys.argv[1])
