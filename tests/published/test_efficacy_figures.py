"""Every strength and time that a study's row carries, typed again from the source, beside its source."""

from __future__ import annotations

from fractions import Fraction

import pytest

from assistant.core.facts import Facts

BLEACH, CHX, QUAT = "sodium hypochlorite", "chlorhexidine", "quaternary ammonium"
IPA, PEROXIDE, PMS = "isopropyl alcohol", "hydrogen peroxide", "potassium peroxymonosulfate"

# row, agent, organism, outcome, percent of active ("" = not stated or not comparable), minutes ("" = not given)
FIGURES = [
    # Bryan et al. (2009), abstract: 0.75 and 2.0 % chlorhexidine, 3.0 and 5.0 % bleach, 1.0 % peroxymonosulfate worked
    # at 1 and 5 min; 0.25 % chlorhexidine, 0.2 and 1.0 % bleach did not. Only for the powder is it clear of what.
    ("ranavirus-chlorhexidine", CHX, "ranavirus", "works", "", "1"),
    ("ranavirus-chlorhexidine-weak", CHX, "ranavirus", "fails", "", "5"),
    ("ranavirus-bleach", BLEACH, "ranavirus", "works", "", "1"),
    ("ranavirus-bleach-weak", BLEACH, "ranavirus", "fails", "", "5"),
    ("ranavirus-peroxymonosulfate", PMS, "ranavirus", "works", "1", "1"),
    # Kampf et al. (2020), summary: 0.1 % hypochlorite, 62-71 % ethanol, 0.5 % peroxide within 1 min; 0.02 %
    # chlorhexidine and 0.05-0.2 % benzalkonium less effective.
    ("serpentovirus-bleach", BLEACH, "serpentovirus", "works", "0.1", "1"),
    ("serpentovirus-ethanol", "ethanol", "serpentovirus", "works", "62", "1"),
    ("serpentovirus-peroxide", PEROXIDE, "serpentovirus", "works", "0.5", "1"),
    ("serpentovirus-accelerated-peroxide", "accelerated hydrogen peroxide", "serpentovirus", "works", "0.5", "1"),
    ("serpentovirus-chlorhexidine", CHX, "serpentovirus", "partly", "0.02", ""),
    ("serpentovirus-quat", QUAT, "serpentovirus", "partly", "", ""),
    # Wood and Payne (1998), summary: dirty conditions, up to 10 min.
    ("serpentovirus-chlorhexidine-dirty", CHX, "serpentovirus", "fails", "", "10"),
    # Sato et al. (1988), abstract: 70 % ethanol, 50 % isopropanol, 0.05 % benzalkonium chloride; no time.
    ("reptarenavirus-ethanol", "ethanol", "reptarenavirus", "works", "70", ""),
    ("reptarenavirus-isopropyl", IPA, "reptarenavirus", "works", "50", ""),
    ("reptarenavirus-quat", QUAT, "reptarenavirus", "works", "0.05", ""),
    # Frerichs, abstract: 12.5 ppm chlorine for 5 min in distilled water; with serum more than 50 ppm.
    ("ferlavirus-bleach", BLEACH, "ferlavirus", "works", "0.00125", "5"),
    ("ferlavirus-bleach-dirty", BLEACH, "ferlavirus", "fails", "0.005", ""),
    # Rutala et al. (2006), abstract: 1,900 ppm chlorine, 1 min; 70 % ethanol in four of five conditions.
    ("adenovirus-bleach", BLEACH, "adenovirus", "works", "0.19", "1"),
    ("adenovirus-ethanol", "ethanol", "adenovirus", "partly", "70", "1"),
    # Review of Optometry (15 June 2006): 3 % peroxide and 70 % isopropanol failed, 1 and 5 min.
    ("adenovirus-peroxide", PEROXIDE, "adenovirus", "fails", "3", "5"),
    ("adenovirus-isopropyl", IPA, "adenovirus", "fails", "70", "5"),
    # Rabenau et al. (2014), abstract: 2-propanol, dried on steel, 5 min.
    ("adenovirus-isopropyl-steel", IPA, "adenovirus", "fails", "", "5"),
    # Rutala et al. (1998), abstract: 100 ppm. Barker et al. (2003), abstract: 500 ppm not enough, 5,000 ppm 2.9 % left.
    ("salmonella-bleach", BLEACH, "salmonella", "works", "0.01", ""),
    ("salmonella-bleach-kitchen", BLEACH, "salmonella", "works", "0.5", ""),
    ("salmonella-bleach-kitchen-weak", BLEACH, "salmonella", "partly", "0.05", ""),
    # Rutala et al. (2000), abstract: 30 s and 5 min in suspension.
    ("salmonella-bleach-suspension", BLEACH, "salmonella", "works", "", "0.5"),
    ("salmonella-quat", QUAT, "salmonella", "works", "", "0.5"),
    ("salmonella-ethanol", "ethanol", "salmonella", "works", "", "0.5"),
    # Mainous and Smith (2005), abstract.
    ("mycobacterium-ethanol", "ethanol", "mycobacterium", "works", "50", "1"),
    ("mycobacterium-ethanol-weak", "ethanol", "mycobacterium", "fails", "30", "60"),
    ("mycobacterium-bleach", BLEACH, "mycobacterium", "partly", "5", "10"),
    ("mycobacterium-quat", QUAT, "mycobacterium", "fails", "", "60"),
    ("mycobacterium-peroxymonosulfate", PMS, "mycobacterium", "fails", "1", "60"),
    # Leon et al., abstract: 0.2 % 5 min killed 99.99 %; all needed 0.5 % for 15 min.
    ("mycobacterium-bleach-others", BLEACH, "mycobacterium", "partly", "0.2", "5"),
    ("mycobacterium-bleach-all", BLEACH, "mycobacterium", "works", "0.5", "15"),
    # Rzadkowska et al. (2016), abstract: bleach effective, chlorhexidine not; strengths in the body, not read.
    ("ophidiomyces-bleach", BLEACH, "ophidiomyces", "works", "", ""),
    ("ophidiomyces-chlorhexidine", CHX, "ophidiomyces", "fails", "", ""),
    # Association of exotic-animal veterinarians: 10 % of household bleach, at least 5 min; advice, untested.
    ("nannizziopsis-bleach", BLEACH, "nannizziopsis", "partly", "", "5"),
    # Becker and Gratwicke (2017), abstract; Johnson et al. (2003), abstract (20 s).
    ("chytrid-bleach", BLEACH, "chytrid", "works", "0.12", "0.5"),
    ("chytrid-bleach-weak", BLEACH, "chytrid", "works", "0.03", "15"),
    ("chytrid-ethanol", "ethanol", "chytrid", "works", "70", "0.333"),
    ("chytrid-peroxymonosulfate", PMS, "chytrid", "works", "0.1", "0.333"),
    ("chytrid-quat", QUAT, "chytrid", "works", "0.1", "0.333"),
    # Webb et al. (2007), abstract: 0.33 mL and 100 mL of product a litre, 1 min.
    ("chytrid-quat-biguanide", "quat-biguanide blend", "chytrid", "works", "", "1"),
    ("chytrid-iodine", "povidone-iodine", "chytrid", "works", "", "1"),
    # Weir et al. (2002), abstract; Barbee et al. (1999), secondary; Korich et al. (1990), abstract (80 ppm, 90 min).
    ("cryptosporidium-bleach", BLEACH, "cryptosporidium", "fails", "6", "33"),
    ("cryptosporidium-bleach-ten", BLEACH, "cryptosporidium", "fails", "5.25", "10"),
    ("cryptosporidium-bleach-water", BLEACH, "cryptosporidium", "partly", "0.008", "90"),
    ("cryptosporidium-ethanol", "ethanol", "cryptosporidium", "fails", "70", "33"),
    ("cryptosporidium-isopropyl", IPA, "cryptosporidium", "fails", "70", "33"),
    ("cryptosporidium-quat", QUAT, "cryptosporidium", "fails", "", "10"),
    ("cryptosporidium-phenolic", "phenolic", "cryptosporidium", "fails", "", "10"),
    ("cryptosporidium-peroxide", PEROXIDE, "cryptosporidium", "works", "6", "20"),
    ("cryptosporidium-peroxide-four", PEROXIDE, "cryptosporidium", "works", "6", "4"),
    ("cryptosporidium-ammonia", "ammonia", "cryptosporidium", "works", "", "13"),
    # Dubey et al. (2002), abstract.
    ("coccidia-bleach", BLEACH, "coccidia", "fails", "", ""),
    ("coccidia-chlorhexidine", CHX, "coccidia", "fails", "2", ""),
    ("coccidia-iodine", "povidone-iodine", "coccidia", "fails", "1", ""),
    ("coccidia-phenolic", "phenolic", "coccidia", "fails", "5", ""),
    ("coccidia-quat", QUAT, "coccidia", "fails", "6", ""),
    ("coccidia-ammonia", "ammonia", "coccidia", "works", "29.5", "60"),
    ("coccidia-ammonia-weak", "ammonia", "coccidia", "fails", "2.95", "360"),
    # Public Health Agency of Canada, Entamoeba histolytica: 1 % hypochlorite.
    ("entamoeba-bleach", BLEACH, "entamoeba", "works", "1", ""),
    # CDC position on C. difficile spores: 5,000 ppm, under 10 min. Kenters et al. (2017): 1.5 % peroxide wipe, 5 min.
    ("spores-bleach", BLEACH, "bacterial spores", "works", "0.5", "10"),
    ("spores-peroxide", PEROXIDE, "bacterial spores", "partly", "1.5", "5"),
    ("spores-quat-biguanide", "quat-biguanide blend", "bacterial spores", "partly", "", "5"),
    # University of Iowa EHS 8.2.1 and 8.2.9: not active against spores.
    ("spores-quat", QUAT, "bacterial spores", "fails", "", ""),
    ("spores-ethanol", "ethanol", "bacterial spores", "fails", "70", ""),
    ("spores-isopropyl", IPA, "bacterial spores", "fails", "70", ""),
    # Oie and Kamiya (1996), abstract: grew at 0.02-0.05 %. Zinn and Bockmuehl (2020), abstract: 5 % acetic acid.
    ("pseudomonas-chlorhexidine-grows", CHX, "pseudomonas", "fails", "0.05", ""),
    ("pseudomonas-vinegar", "acetic acid", "pseudomonas", "works", "5", ""),
    # The same abstract: 10 % acetic with 1.5 % citric acid, suspension. Study cards on Mader's, chapter 18: 10 min.
    ("pseudomonas-vinegar-citric", "acetic acid", "pseudomonas", "works", "10", ""),
    ("pseudomonas-chlorhexidine-cards", CHX, "pseudomonas", "fails", "", "10"),
    # CDC/HICPAC (2008), quats, secondary copy: quat, 70 % isopropanol, 80 ppm chlorine; 5 s of wiping, over 95 %.
    ("pseudomonas-quat-wipe", QUAT, "pseudomonas", "partly", "", "0.083"),
    ("pseudomonas-bleach-wipe", BLEACH, "pseudomonas", "partly", "0.008", "0.083"),
    ("pseudomonas-isopropyl-wipe", IPA, "pseudomonas", "partly", "70", "0.083"),
    # Langdon (1989) in Bryan et al.: over 113 days dry, which are 162,720 min.
    ("ranavirus-drying", "drying", "ranavirus", "fails", "", "162720"),
    # Frerichs, abstract: 50 ppm iodine for 5 min in distilled water; 500 ppm for 30 min with serum did nothing.
    ("ferlavirus-iodine", "povidone-iodine", "ferlavirus", "works", "0.005", "5"),
    ("ferlavirus-iodine-dirty", "povidone-iodine", "ferlavirus", "fails", "0.05", "30"),
    # Sato et al. (1988), abstract: 1 % saponated cresol. Mainous and Smith (2005), abstract: 1 % phenolic, 1 min.
    ("reptarenavirus-phenolic", "phenolic", "reptarenavirus", "works", "1", ""),
    ("mycobacterium-phenolic", "phenolic", "mycobacterium", "works", "1", "1"),
    # Fayer et al. (1996), abstract: ammonia gas, 24 h. Eimeria tenella study, abstract: 5 and 10 % ammonia.
    ("cryptosporidium-ammonia-gas", "ammonia", "cryptosporidium", "works", "", "1440"),
    ("coccidia-ammonia-chicken", "ammonia", "coccidia", "works", "5", ""),
    # Dix et al. (2004), abstract: four weeks at room temperature among the methods with 36-78 %.
    ("pinworm-drying", "drying", "pinworm", "partly", "", "40320"),
    # Tanner (2009), abstract: saturated steam vapour, 5 s.
    ("spores-steam", "heat", "bacterial spores", "works", "", "0.083"),
    ("salmonella-steam", "heat", "salmonella", "works", "", "0.083"),
    # Cutts et al. (2020), abstract: 0.5 % hypochlorite 5 min, 70 % ethanol 2.5 min, Ebola on steel with soil.
    ("enveloped-bleach", BLEACH, "enveloped viruses", "works", "0.5", "5"),
    ("enveloped-ethanol", "ethanol", "enveloped viruses", "works", "70", "2.5"),
    # Wood and Payne (1998), summary: cetrimide and chlorhexidine, dirty conditions, up to 10 min.
    ("enveloped-chlorhexidine", CHX, "enveloped viruses", "works", "", "10"),
    ("enveloped-chlorhexidine-corona", CHX, "enveloped viruses", "fails", "", "10"),
    ("non-enveloped-chlorhexidine", CHX, "non-enveloped viruses", "fails", "", "10"),
    # Mbithi et al. (1990), abstract: more than 5,000 ppm free chlorine, 1 min; acids, alcohols, iodine failed at 1 min.
    ("non-enveloped-bleach", BLEACH, "non-enveloped viruses", "works", "0.5", "1"),
    ("non-enveloped-vinegar", "acetic acid", "non-enveloped viruses", "fails", "", "1"),
    ("non-enveloped-iodine", "povidone-iodine", "non-enveloped viruses", "fails", "", "1"),
    ("non-enveloped-ethanol", "ethanol", "non-enveloped viruses", "fails", "", "1"),
    ("non-enveloped-isopropyl", IPA, "non-enveloped viruses", "fails", "", "1"),
]

# row, organism, outcome, degrees, minutes
HEAT = [
    # Fayer (1994): 72.4 degC for 1 min. USDA-ARS summary 32141: 71.1 degC for 1 min.
    ("cryptosporidium-heat", "cryptosporidium", "works", "72.4", "1"),
    ("cryptosporidium-heat-summary", "cryptosporidium", "works", "71.1", "1"),
    # Dubey et al. (2002), abstract: 60 degC moist heat 1 min; 50 degC for 60 min failed.
    ("coccidia-heat", "coccidia", "works", "60", "1"),
    ("coccidia-heat-weak", "coccidia", "fails", "50", "60"),
    # National Institutes of Health (1950), abstract: 52 degC 1 min, 51 5 min, 50 10 min; 45 took over 2 h.
    ("entamoeba-heat", "entamoeba", "works", "52", "1"),
    ("entamoeba-heat-five", "entamoeba", "works", "51", "5"),
    ("entamoeba-heat-ten", "entamoeba", "works", "50", "10"),
    ("entamoeba-heat-weak", "entamoeba", "fails", "45", "120"),
    # Dix et al. (2004), abstract: 100 degC dry heat, 30 min. DOI 10.31038/IJVB.2020411: 65 degC, 4-7 min a log.
    ("pinworm-heat", "pinworm", "works", "100", "30"),
    ("tortoise-herpesvirus-heat", "tortoise herpesvirus", "partly", "65", "7"),
]


@pytest.mark.parametrize(("row", "organism", "outcome", "degrees", "minutes"), HEAT)
def test_row_of_heat(row: str, organism: str, outcome: str, degrees: str, minutes: str, facts: Facts) -> None:
    found = {result.fact.id: result for result in facts.efficacy("heat", organism)}[f"efficacy-{row}"]
    assert (found.outcome, found.percent) == (outcome, None)
    assert (found.degrees, found.minutes) == (Fraction(degrees), Fraction(minutes))


@pytest.mark.parametrize(("row", "agent", "organism", "outcome", "percent", "minutes"), FIGURES)
def test_row(row: str, agent: str, organism: str, outcome: str, percent: str, minutes: str, facts: Facts) -> None:
    found = {result.fact.id: result for result in facts.efficacy(agent, organism)}[f"efficacy-{row}"]
    assert found.outcome == outcome
    assert found.percent == (Fraction(percent) if percent else None)
    assert found.minutes == (Fraction(minutes) if minutes else None)
    assert found.fact.source
    assert found.fact.place


def test_no_row_with_a_strength_or_time_goes_unchecked(facts: Facts) -> None:
    checked = {f"efficacy-{row[0]}" for row in (*FIGURES, *HEAT)}
    rows = [r for a in (*facts.agents, *facts.methods) for o in facts.organisms for r in facts.efficacy(a, o)]
    assert [
        r.fact.id for r in rows if (r.percent is not None or r.minutes is not None) and r.fact.id not in checked
    ] == []


@pytest.mark.parametrize(
    ("fact", "figure"),
    [
        ("wet-time-bleach", 10),  # shelter dilutions page, Sodium hypochlorite
        ("wet-time-bleach-leaflet", 1),  # CDC (2020) CS316270A: at least 1 minute
        ("wet-time-chlorhexidine", 10),  # study cards on Mader's, chapter 18
        ("wet-time-quat", 10),  # the same (5 to 10); labels say 10
        ("wet-time-alcohol", 3),  # University of Iowa EHS 8.2.1: at least 3 minutes on surfaces
        ("wet-time-bleach-habit", 0.5),  # common practice, no source
        ("wet-time-chlorhexidine-habit", 0.25),  # common practice, no source
        ("wet-time-quat-habit", 0.5),  # common practice, no source
        ("wet-time-detergent-none", 61.4),  # Barker et al. (2003), abstract
        ("first-aid-rinse", 15),  # HRSA Poison Help; EPA, Accidents: 15 to 20
        ("first-aid-rinse-shorter", [5, 10]),  # Missouri Poison Center: eye 5, skin 10
        ("first-aid-eye-urgent", 60),  # a US poison-centre service's first aid page
        ("first-aid-animal-flush", 15),  # pet first-aid page on chemical injuries
        ("refusal-wound-cells", 0.02),  # PMC6098817, abstract
        ("refusal-wound-fibroblasts", 0.5),  # Veterinary Surgery 20:306-310, abstract
        ("refusal-chlorhexidine-water", 1.4),  # ECHA dossier 13169: zebrafish
        ("together-bleach-acid-rinsed", 14),  # MMWR 40(36): at least 14 people
        ("material-metal-bleach", 0.1),  # peroxymonosulfate corrosion study, 30(5): 0.1 % hypochlorite, one day
        ("material-metal-peroxymonosulfate", [1, 2]),  # the same: copper dulled in 1 day, aluminium in 2
        ("material-polycarbonate-soap", 60),  # Canadian Plastics (2008): warm water below 60 degC
        ("material-cotton-quat", 85.3),  # Engelbrecht et al. (2013), abstract
        ("material-stone-boil", 30),  # Niagara Falls animal hospital (2014): up to half an hour
        ("material-wood-core", 56),  # ISPM 15: 56 degC for 30 min in the core
        ("material-fabric", 60),  # Addie et al. (2015), abstract: 60 degC or more
        ("choosing-heat", 60),  # the same
        ("protection-hands", 20),  # Tacoma-Pierce County: at least 20 s
        ("protection-hand-gel", 60),  # CDC reptiles page, restated: 60 % alcohol
        ("protection-carriers", [41, 48]),  # Marin et al. (2021), Cota et al. (2021), abstracts
        ("protection-under-5", 5),  # CDC reptiles page, restated
        ("protection-over-65", 65),  # CDC leaflet (archived 2021)
        ("workflow-keep-wet", [1.5, 2]),  # Rutala, questions on the guideline of 2008
        ("workflow-tub-temperature", [17, 30]),  # Vets 4 Exotics
    ],
)
def test_single_figures_carried(fact: str, figure: object, facts: Facts) -> None:
    assert facts[fact].value == figure
