"""Answers points from open libraries, apart from the code under test. Reads and writes JSON.

In: a list of {"kind": ..., "points": [[...], ...]}. Out: a list of lists of numbers. SI units; pressures in Pa.
"""

import json
import sys
from decimal import Decimal, getcontext

from fluids.atmosphere import ATMOSPHERE_1976
from fluids.fittings import Darby, Darby3K
from fluids.friction import friction_factor
from iapws import SeaWater
from iapws._iapws import _Viscosity
from iapws.iapws97 import _PSat_T, _Region1, _TSat_P

getcontext().prec = 40
NATURAL_TO_DECADIC = Decimal(2) / Decimal(10).ln()


def colebrook_to_40_digits(reynolds, roughness):
    """Newton's method on x = 1/sqrt(f), from the answer of the library."""
    x = 1 / Decimal(friction_factor(Re=reynolds, eD=roughness, Method="Colebrook")).sqrt()
    a, b = Decimal(roughness) / Decimal("3.7"), Decimal("2.51") / Decimal(reynolds)
    for _ in range(6):
        inside = a + b * x
        x -= (x + NATURAL_TO_DECADIC * inside.ln()) / (1 + NATURAL_TO_DECADIC * b / inside)
    return float(1 / (x * x))


def three_k(row, inches, reynolds):
    return Darby3K(NPS=inches, Re=reynolds, name=list(Darby)[int(row)])


KINDS = {
    "density": lambda temperature, pressure: 1 / _Region1(temperature, pressure / 1e6)["v"],
    "viscosity": lambda temperature, density: _Viscosity(density, temperature),
    "saturation": lambda temperature: _PSat_T(temperature) * 1e6,
    "boiling point": lambda pressure: _TSat_P(pressure / 1e6),
    "sea water density": lambda temperature, salinity: SeaWater(T=temperature, P=0.101325, S=salinity).rho,
    "air pressure": lambda altitude: ATMOSPHERE_1976(altitude).P,
    "air temperature": lambda altitude: ATMOSPHERE_1976(altitude).T,
    "air density": lambda altitude: ATMOSPHERE_1976(altitude).rho,
    "friction": lambda reynolds, roughness: friction_factor(Re=reynolds, eD=roughness, Method="Colebrook"),
    "friction to 40 digits": colebrook_to_40_digits,
    "3-K coefficient": three_k,
}

json.dump([[KINDS[one["kind"]](*point) for point in one["points"]] for one in json.load(sys.stdin)], sys.stdout)
