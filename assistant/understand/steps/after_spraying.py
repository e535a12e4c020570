"""What is told of a surface that has been sprayed: again, never, not rinsed off, or for nothing."""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Reading
from assistant.understand.look import BY_RULE, Look
from assistant.understand.steps.came_to_nothing import something_else_put_on, wet_time_was_none
from assistant.understand.steps.done_over import a_part_now, is_kept_wet, left_out, sprayed_over
from assistant.understand.steps.not_off import not_rinsed_off, soap_not_off


def done_over(look: Look) -> Reading | None:
    """A part sprayed again, or never; what is left of soap or product."""
    again, never = sprayed_over(look), left_out(look)
    if again is not None:
        kept = is_kept_wet(look) and not look.told.dried
        kept = (
            kept and "missed" not in look.parsed.plain and not a_part_now(look)
        )  # what was missed is wet only from now
        return look.reading("rewet" if kept else "done", replace(again, too_early=not kept), BY_RULE)
    residue = soap_not_off(look) or not_rinsed_off(look)
    if residue is not None:
        return look.reading("undo", residue, BY_RULE)
    return look.by_rule("dried_early", never)


def came_to_nothing(look: Look) -> Reading | None:
    """Told later on: it was too short, the wrong mix, dirty again, never aired, or something else was put on."""
    none, other = wet_time_was_none(look), something_else_put_on(look)
    if none is not None:
        return look.reading("dried_early", none, BY_RULE)
    return look.by_rule("done", other)
