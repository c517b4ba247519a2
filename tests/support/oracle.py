"""Answers points from open libraries, apart from the code under test. Reads and writes JSON.

In: a list of {"kind": ..., "points": [[...], ...]}. Out: a list of lists of numbers. SI units; pressures in Pa.
"""

import json
import sys

from fluids.atmosphere import ATMOSPHERE_1976
from iapws import SeaWater
from iapws._iapws import _Viscosity
from iapws.iapws97 import _PSat_T, _Region1, _TSat_P


KINDS = {
    "density": lambda temperature, pressure: 1 / _Region1(temperature, pressure / 1e6)["v"],
    "viscosity": lambda temperature, density: _Viscosity(density, temperature),
    "saturation": lambda temperature: _PSat_T(temperature) * 1e6,
    "boiling point": lambda pressure: _TSat_P(pressure / 1e6),
    "sea water density": lambda temperature, salinity: SeaWater(T=temperature, P=0.101325, S=salinity).rho,
    "air pressure": lambda altitude: ATMOSPHERE_1976(altitude).P,
    "air temperature": lambda altitude: ATMOSPHERE_1976(altitude).T,
    "air density": lambda altitude: ATMOSPHERE_1976(altitude).rho,
}

json.dump([[KINDS[one["kind"]](*point) for point in one["points"]] for one in json.load(sys.stdin)], sys.stdout)
