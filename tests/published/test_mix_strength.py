"""`mix_strength` and `top_up`, through whole turns, against recipes whose sources print the strength."""

from __future__ import annotations

from fractions import Fraction

import pytest
from tool import Tool

from assistant.core.household import Bottle, Household
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.quantity import read_amount, read_mix

CDC_2020 = "CDC (2020) Cleaning and disinfecting your facility, CS316270A, Disinfect"
NCSU = "Fraser, Lackey (2004) North Carolina State University food-safety questions, Sanitation and hygiene"
ALASKA = "State of Alaska DEC, Food Safety and Sanitation, Sanitizing sheet, Making a sanitizer"
IERE = "Environmental education site on panleukopenia, 1:32 in kitchen measures"
WAC = "Washington Administrative Code 296-823-14055, note on disinfectants"
WHO = "WHO (2014), Annex G, Table G.1"
LAB = "Laboratory biosafety manual text on a document site, Table 12"
CDC_2008 = "Premier bulletin of 24 Nov 2008, the bleach table of the CDC 2008 guideline, cups"

# source, bleach in percent, concentrate, what it goes to, and whether that is water or the whole; ppm; tolerance, why.
ARITHMETIC = "the source's recipe; ppm by its arithmetic, in whole numbers"
POURED = [
    (CDC_2020, "5.25", "5 tbsp", "1 US gal", "water", 1006, 0.6, ARITHMETIC),
    (CDC_2020, "6", "5 tbsp", "1 US gal", "water", 1149, 0.6, ARITHMETIC),
    (CDC_2020, "8.25", "5 tbsp", "1 US gal", "water", 1580, 0.6, ARITHMETIC),
    (CDC_2020, "5.25", "4 tsp", "1 US qt", "water", 1071, 0.6, ARITHMETIC),
    (CDC_2020, "6", "4 tsp", "1 US qt", "water", 1224, 0.6, ARITHMETIC),
    (CDC_2020, "8.25", "4 tsp", "1 US qt", "water", 1684, 0.6, ARITHMETIC),
    (CDC_2020, "5.25", "1/3 US cup", "1 US gal", "water", 1071, 0.6, ARITHMETIC),
    (NCSU, "5.25", "1 tbsp", "1 US gal", "water", 204, 0.6, "prints 200, one figure"),
    (NCSU, "6", "1 tbsp", "1 US gal", "water", 233, 0.6, ARITHMETIC),
    (NCSU, "8.25", "1 tbsp", "1 US gal", "water", 321, 0.6, ARITHMETIC),
    (NCSU, "5.25", "1/4 US cup", "5 US gal", "water", 164, 0.6, ARITHMETIC),
    (ALASKA, "5.25", "1 tsp", "1 US gal", "water", 68, 0.6, ARITHMETIC),
    (ALASKA, "6", "1 tsp", "1 US gal", "water", 78, 0.6, ARITHMETIC),
    (ALASKA, "8.25", "1 tsp", "1 US gal", "water", 107, 0.6, "the strength at which its 100 ppm holds"),
    (IERE, "5.25", "1/2 US cup", "1 US gal", "water", 1591, 0.5, "whole numbers"),
    (IERE, "6", "1/2 US cup", "1 US gal", "water", 1818, 0.5, "whole numbers"),
    (IERE, "8.25", "1/2 US cup", "1 US gal", "water", 2500, 0.0, "exact"),
    (WAC, "5.25", "10 mL", "946 mL", "total", 555, 0.5, "called 1:100, which would be 525: 10 mL is 1 in 94.6"),
    (WAC, "5.25", "94 mL", "946 mL", "total", 5217, 0.5, "called 1:10, which would be 5250: 94 mL is 1 in 10.06"),
    (WHO, "5", "1 mL", "99 mL", "water", 500, 0.0, "exact"),
    (WHO, "2.5", "2 mL", "98 mL", "water", 500, 0.0, "exact"),
    (LAB, "5", "20 mL", "1 L", "total", 1000, 0.0, "exact: 1 g/L"),
    (LAB, "5", "100 mL", "1 L", "total", 5000, 0.0, "exact: 5 g/L"),
    (CDC_2008, "5.25", "3/2 US cup", "1 US gal", "water", 4500, 0.6, "prints 6000 beside it: contradicts itself"),
    (CDC_2008, "6.15", "1/4 US cup", "1 US gal", "water", 946, 0.6, "prints 600 beside it: contradicts itself"),
]


@pytest.mark.parametrize(("source", "percent", "part", "whole", "role", "ppm", "tolerance", "why"), POURED)
def test_what_was_poured_is_as_strong_as_published(
    source: str, percent: str, part: str, whole: str, role: str, ppm: float, tolerance: float, why: str
) -> None:
    reply = Tool(Household()).say(
        "mix_strength",
        agents=("sodium hypochlorite",),
        stock_strength=Amount(Fraction(percent), "%"),
        volumes=(read_amount(part), read_amount(whole)),
        roles=("product", role),
    )
    assert float(reply.values["strength_ppm"]) == pytest.approx(ppm, abs=tolerance or 1e-9), (source, why)
    assert float(reply.values["strength_percent"]) == pytest.approx(ppm / 10_000, abs=(tolerance or 1e-9) / 10_000)


# CDC, Appendix E, Examples 1 and 3: parts of water for each part of bleach; WHO Annex G. All exact.
@pytest.mark.parametrize(
    ("percent", "water", "made"), [("3.5", 6, "0.5"), ("5", 49, "0.1"), ("5", 99, "0.05"), ("2.5", 49, "0.05")]
)
def test_parts_poured_are_the_parts_told(percent: str, water: int, made: str) -> None:
    values = (
        Tool(Household())
        .say(
            "mix_strength",
            agents=("sodium hypochlorite",),
            stock_strength=Amount(Fraction(percent), "%"),
            volumes=(read_amount("1 US cup"), read_amount(f"{water} US cup")),
            roles=("product", "water"),
        )
        .values
    )
    assert (values["parts"], values["strength_percent"]) == ((1, water), Fraction(made))


# The identity C1 V1 = C2 V2: what is added has the strength of what is there. Left, size, mix, concentrate. All exact.
@pytest.mark.parametrize(
    ("left", "size", "mix", "concentrate"),
    [
        ("180 mL", "500 mL", "1 in 32", "10"),
        ("0.5 L", "1 L", "1 in 50", "10"),
        ("1 mL", "100 mL", "1 to 98", "1"),
        ("250 mL", "750 mL", "1 in 100", "5"),
    ],
)
def test_a_top_up_is_mixed_like_what_is_there(left: str, size: str, mix: str, concentrate: str) -> None:
    home = Household(bottles=(Bottle("grey bottle", read_amount(size), mix=read_mix(mix)),))
    values = Tool(home).say("top_up", bottles=("grey bottle",), volumes=(read_amount(left),), roles=("left",)).values
    assert values["concentrate"] == Amount(Fraction(concentrate), "mL")
    added = values["concentrate"].amount + values["water"].amount
    assert added + read_amount(left).amount * (1000 if "L" in left and "mL" not in left else 1) == (
        read_amount(size).amount * (1000 if "mL" not in size else 1)
    )
