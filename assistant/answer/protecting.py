"""What to wear, what to open, who stays out; masks, hands and sinks when these are asked about."""

from __future__ import annotations

from typing import Literal, TypeAlias

from assistant.answer.meeting import agent_of
from assistant.answer.named import supply_named
from assistant.answer.which import open_rounds
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.facts import Agent, Fact

Topic: TypeAlias = Literal["wear", "mask", "sink", "hands", "at risk", "eating"]

TOPICS: tuple[tuple[Topic, frozenset[str]], ...] = (
    ("mask", frozenset({"mask", "masks", "respirator", "n95", "ffp2", "ffp3", "face-mask"})),
    ("sink", frozenset({"sink", "kitchen", "bathtub", "bathroom", "dishwasher", "shower", "worktop", "counter"})),
    (
        "at risk",
        frozenset(
            {
                "pregnant",
                "expecting",
                "gran",
                "nan",
                "granny",
                "grandad",
                "grandpa",
                "chemo",
                "transplant",
                "baby",
                "toddler",
                "child",
                "children",
                "kid",
                "kids",
                "elderly",
                "immune",
                "grandma",
                "pupil",
                "pupils",
            }
            | {"class", "classroom", "schoolchildren", "toddlers", "boy", "girl"}
        ),
    ),
    ("eating", frozenset({"eat", "eating", "drink", "drinking", "smoke", "smoking", "snack", "coffee", "tea"})),
    ("hands", frozenset({"hands", "sanitiser", "sanitizer", "gel"})),
)
"""What is asked about in particular, by a word that says so."""

OF_TOPIC: dict[Topic, tuple[str, ...]] = {
    "wear": (),
    "mask": ("protection-mask",),
    "sink": ("protection-no-kitchen", "protection-sink"),
    "hands": ("protection-hands", "protection-hand-gel"),
    "at risk": ("protection-under-5", "protection-over-65", "protection-immune", "protection-pregnant"),
    "eating": ("protection-no-eating",),
}
"""The facts of each, the one that is spoken first."""

OF_FAMILY: dict[str, str] = {
    "chlorine": "protection-bleach",
    "quat": "protection-concentrate",
    "biguanide": "protection-concentrate",
    "alcohol": "protection-alcohol",
    "peroxymonosulfate": "protection-peroxymonosulfate",
}
"""The fact of each family of agents; the rest take gloves and eyes covered."""

ALWAYS = ("protection-gloves", "protection-out", "protection-mask", "protection-hands", "protection-no-kitchen")
"""Told on the screen whatever is used."""

AT_RISK: dict[str, str] = {
    "under 5": "protection-under-5",
    "over 65": "protection-over-65",
    "pregnant": "protection-pregnant",
    "immune": "protection-immune",
}
"""The fact for each word of keeping.toml's at_risk."""


def protect(reading: Reading, world: World) -> Answer:
    """What to wear and open with this agent, and who keeps out; or what is asked about in particular."""
    agent = _agent(reading, world)
    topic = topic_of(reading)
    own = world.facts[OF_FAMILY.get(agent.family, "caution-gloves-eyes")] if agent is not None else None
    ids = (*OF_TOPIC[topic], *((own.id,) if own is not None else ("caution-gloves-eyes", "caution-ventilate")), *ALWAYS)
    meant = _who_is_meant(reading) if topic == "at risk" else None
    facts = tuple(world.facts[fact] for fact in dict.fromkeys((*((meant,) if meant else ()), *ids)))
    risks = _at_risk(world)
    wear, opened = ["gloves", "eyes covered"], ["a window"]
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "protecting.protect",
        details={
            "topic": topic,
            "agent": agent,
            "facts": facts,
            "at_risk": tuple(fact.says for fact in risks),
            "meant": world.facts[meant].says if meant is not None else None,
            "needs_cold": agent is not None and agent.needs_cold,
            "refused": world.facts[agent.refused].says if agent is not None and agent.refused is not None else None,
        },
        values={
            "agent": agent.id if agent is not None else None,
            "topic": topic,
            "wear": tuple(wear),
            "open": tuple(opened),
            "out": ("animals", "small children", *world.household.people.at_risk),
            "mask_stops_gas": False,
            "kitchen_sink": False,
            "hands_seconds": float(world.facts["protection-hands"].value),
        },
        cautions=("caution-label-first", "caution-poison-centre"),
        sources=tuple(fact.cited() for fact in (*facts, *risks)),
    )


_WHO: tuple[tuple[str, frozenset[str]], ...] = (
    ("protection-pregnant", frozenset({"pregnant", "expecting"})),
    ("protection-immune", frozenset({"immune", "chemo", "transplant"})),
    ("protection-over-65", frozenset({"elderly", "gran", "nan", "granny", "grandma", "grandad", "grandpa"})),
    ("protection-under-5", frozenset({"baby", "toddler", "toddlers"})),
)
"""The fact for who is spoken of."""


def _who_is_meant(reading: Reading) -> str | None:
    words = set(reading.words)
    return next((fact for fact, own in _WHO if words & own), None)


def topic_of(reading: Reading) -> Topic:
    """What is asked about in particular; "wear" where nothing is."""
    words = set(reading.words)
    return next((topic for topic, own in TOPICS if words & own), "wear")


def at_risk_lines(world: World) -> tuple[str, ...]:
    """What public health says for those at risk at home, a line each."""
    return tuple(fact.says for fact in _at_risk(world))


def _at_risk(world: World) -> tuple[Fact, ...]:
    named = (AT_RISK.get(who) for who in world.household.people.at_risk)
    return tuple(world.facts[fact] for fact in named if fact is not None)


def _agent(reading: Reading, world: World) -> Agent | None:
    """The agent named; none named, the one that the only open round goes with."""
    agent, _, _ = supply_named(reading, world)
    if agent is not None:
        return agent
    agents = {round_.agent for round_ in open_rounds(world)}
    return agent_of(agents.pop(), world) if len(agents) == 1 else None
