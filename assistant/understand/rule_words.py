"""The words that the rules turn on: known words, so that none of them is taken for a slip of another."""

from __future__ import annotations

from assistant.understand.bottles.bottle_doubts import WORDS as BOTTLE_DOUBT_WORDS
from assistant.understand.bottles.other_product import WORDS as OTHER_PRODUCT_WORDS
from assistant.understand.bottles.plainly_filled import WORDS as FILL_WORDS
from assistant.understand.harm import alarms, called_for_help, everyday, fire, taken_in, unhurt
from assistant.understand.harm.patterns import WORDS as CRY_WORDS
from assistant.understand.harm.treating import WORDS as TREATING_WORDS
from assistant.understand.harm.words import WORDS as PART_WORDS
from assistant.understand.steps.came_to_nothing import WORDS as NOTHING_WORDS
from assistant.understand.steps.claimed_steps import WORDS as CLAIM_WORDS
from assistant.understand.steps.done_over import WORDS as DONE_OVER_WORDS
from assistant.understand.steps.not_off import WORDS as NOT_OFF_WORDS
from assistant.understand.steps.part_told import WORDS as PART_TOLD_WORDS
from assistant.understand.steps.told import WORDS as TOLD_WORDS
from assistant.understand.text.known_words import EVERYDAY, ITEMS, MATERIALS

OF_THE_RULES = (
    MATERIALS
    | ITEMS
    | EVERYDAY
    | CLAIM_WORDS
    | CRY_WORDS
    | PART_WORDS
    | TREATING_WORDS
    | alarms.WORDS
    | called_for_help.WORDS
    | fire.WORDS
    | taken_in.WORDS
    | everyday.WORDS
    | unhurt.WORDS
    | TOLD_WORDS
    | PART_TOLD_WORDS
    | DONE_OVER_WORDS
    | BOTTLE_DOUBT_WORDS
    | FILL_WORDS
    | OTHER_PRODUCT_WORDS
    | NOTHING_WORDS
    | NOT_OFF_WORDS
)
"""Words that the rules know."""
