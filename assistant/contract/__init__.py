"""The values that pass between the rooms: what was heard, what it was taken to mean, the answer, the reply.

Heard -> (understand) -> Reading -> (answer) -> Answer -> (say) -> Reply. All frozen; none knows its maker.
"""

from assistant.contract.answered import (
    PENDING_LASTS,
    Answer,
    Handler,
    Line,
    Outcome,
    Pending,
    Question,
    Reads,
    Reply,
    SlotWanted,
    Talk,
    Turn,
    World,
)
from assistant.contract.understood import (
    NO_SMELL,
    UNHEARD_PRODUCT,
    Choice,
    Doubt,
    Draught,
    Faulty,
    Heard,
    Reading,
    SaidTime,
    Slots,
    Unknown,
    VolumeRole,
    Word,
)

__all__ = [
    "NO_SMELL",
    "PENDING_LASTS",
    "UNHEARD_PRODUCT",
    "Answer",
    "Choice",
    "Doubt",
    "Draught",
    "Faulty",
    "Handler",
    "Heard",
    "Line",
    "Outcome",
    "Pending",
    "Question",
    "Reading",
    "Reads",
    "Reply",
    "SaidTime",
    "SlotWanted",
    "Slots",
    "Talk",
    "Turn",
    "Unknown",
    "VolumeRole",
    "Word",
    "World",
]
