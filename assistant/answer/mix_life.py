"""How long a mix of a product keeps, whoever made it when: by its own label, else by the figure for its kind."""

from __future__ import annotations

from assistant.answer.filling import sources_of
from assistant.answer.product import Product
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.shelf.bottles import life_of


def asked_of_any_mix(reading: Reading) -> bool:
    """ "How long does a bleach mix keep": of no bottle, and of none that was made at a time said."""
    slots = reading.slots
    return slots.setting is not None and slots.setting[0] == "kept" and not slots.bottles and slots.when is None


def mix_life(reading: Reading, product: Product, world: World) -> Answer | None:
    """How long a mix of it is good for from when it is made; None: what it is isn't known."""
    if product.agent is None:
        return None
    life = life_of(product.agent, product.stock, world.now, world.facts)
    hours = (life.until - world.now).total_seconds() / 3600 if life.until is not None else None
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "shelf.mix_life",
        details={"name": product.agent.name, "basis": life.basis, "hours": hours},
        values={
            "ready": None,
            "expires": None,
            "bottle": None,
            "stock": product.stock.name if product.stock is not None else None,
            "agent": product.agent.id,
            "basis": life.basis,
            "hours": hours if life.basis in ("label", "published") else None,
        },
        cautions=("caution-label-first",),
        sources=sources_of(life, product, world),
    )
