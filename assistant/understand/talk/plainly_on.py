"""What plainly goes on from the answer just given, in words that would be another question by themselves.

"What do I do first", after a mite was seen, is of the mite; "do I carry on spraying", after an escape, is of that;
"with the pink bottle I meant", after a clean was begun, begins it with that one.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import ASKED_WHY, Outcome, Reading, Slots
from assistant.core.round.rounds import is_open
from assistant.understand.look import BY_RULE, Look
from assistant.understand.named.by_colour import agents_of, products_by_colour
from assistant.understand.text.patterns import Pattern

_WHAT_DO_I_DO = r"(?:what|what else) (?:do|should|must|can|shall) (?:i|we) (?:need to |have to )?do"
_OPENS = r"(?:(?:and|so|ok|but|right|well|now|then|please|oh|god|help|no|sorry|hang on|wait|actually|um|,) ?)*"
_ON: tuple[tuple[str, str, Pattern], ...] = (
    (
        "splash",
        "splash",
        Pattern(
            rf"{_OPENS}(?:for )?how long(?: for| then| is that| do i| should i| must i| have i got to| rinse| keep"
            r"| rinsing| it| going| under| water)*"
            rf"|{_OPENS}(?:is|will|was) (?:that|it|DURATION|NUMBER minutes?)(?: be| really)?(?: long)? enough"
        ),
    ),
    (
        "escape",
        "escape",
        Pattern(
            rf"{_OPENS}(?:should|shall|do|can|could|would) (?:i|it) .*\b(?:lights?|heat|dark|door|food|towel"
            rf"|find (?:him|her|it))\b.*|.*\bwhere else\b.*"
        ),
    ),
    (
        "escape",
        "escape",
        Pattern(
            rf"{_OPENS}(?:do|should|can|shall|may|must) (?:i|we) (?:just )?(?:carry on|keep|continue|go on|stop"
            r"|finish)\b(?! (?:him|her|it|them)\b).*"
        ),
    ),
    (
        "outbreak",
        "outbreak",
        Pattern(
            rf"{_OPENS}there (?:is|are) (?:one|some|another|more|another one|two)(?: more)? on (?:the "
            rf"|my )?(?:\w+ )?(?:ANIMAL|ENCLOSURE)\b.*"
        ),
    ),
    (
        "outbreak",
        "outbreak",
        Pattern(
            rf"{_OPENS}(?:do|should|must|need) i (?:need to |have to )?(?:do|treat|clean|ring|call"
            rf"|tell) (?:the |my )?(?:whole|entire|vet|everybody|everyone|all"
            r"|them all|others?|rest|other)\b.*"
        ),
    ),
    (
        "outbreak",
        "quarantine",
        Pattern(
            rf"{_OPENS}(?:does|will|would) that (?:set|put|mean|start|reset)\b.*\b(?:DURATION|NUMBER|days"
            rf"|quarantine|over|again)\b.*"
        ),
    ),
    (
        "outbreak",
        "outbreak",
        Pattern(rf"{_OPENS}{_WHAT_DO_I_DO}(?: first| now| next| about it| then| with (?:him|her|it|them))*"),
    ),
    (
        "unknown_bottle",
        "unknown_bottle",
        Pattern(
            rf"{_OPENS}{_WHAT_DO_I_DO}(?: with| about) (?:it|that|this|the bottle|the thing)"
            r"(?: then| now| instead)*"
        ),
    ),
    (
        "spill",
        "spill",
        Pattern(
            rf"{_OPENS}(?:do|should|must|shall) (?:i|we) (?:need to |have to |got to )*(?:get|move|take|carry|bring"
            r"|put) (?:all )?(?:the |my )?(?:animals?|them|him|her|everyone|everybody|tubs?|ANIMAL|ENCLOSURE"
            r"|others)\b"
            r".*\b(?:out|away|next door|another room|upstairs|elsewhere)\b.*"
        ),
    ),
    (
        "spill",
        "spill",
        Pattern(
            rf"{_OPENS}(?:can|could|may|should|shall|do) (?:i|we) (?:just )?(?:use|put|throw|chuck|mop|soak|wipe"
            r"|sprinkle|tip|hoover|sweep)\b(?!.*(?:AGENT|STOCK|BOTTLE)).*"
            rf"|{_OPENS}(?:is|are|will|would) (?:a |an |some |the |my )?(?:old )?\w+(?: \w+)? (?:alright"
            rf"|all right|ok"
            r"|good enough|any good|good|fine|do)(?: for (?:it|that|this)| on it| to \w+ (?:it|that) (?:up|off))?"
            rf"|{_OPENS}(?:with )?(?:what|which) (?:do |should |can )?i (?:mop|take|soak|wipe|pick"
            rf"|clean) it(?: up| off)?"
            rf"(?: with)?\b.*|{_OPENS}(?:it is|it was|about|only|just|maybe|roughly|that is| )*VOLUME\b"
            r"(?!.*(?:AGENT|STOCK|BOTTLE)).*"
        ),
    ),
    (
        "top_up",
        "top_up",
        Pattern(
            rf"{_OPENS}(?:it is only from this morning ,? ?)?{_OPENS}how much (?:of (?:each|both)"
            rf"|water and how much"
            r"|of what|(?:AGENT|STOCK) and how much)\b.*"
        ),
    ),
    (
        "quarantine",
        "quarantine",
        Pattern(rf"{_OPENS}(?:can|could|may|should) (?:i|we) (?:cut|shorten|make|stop|end|bring)\b.*"),
    ),
    (
        "quarantine",
        "quarantine",
        Pattern(
            rf"{_OPENS}(?:(?:that is|it is) \w+(?: \w+)? ,? )?(?:why|how come)\b.*\b(?:long|days|weeks"
            rf"|months?|wait)\b.*"
        ),
    ),
    (
        "together",
        "together",
        Pattern(
            rf"{_OPENS}(?:i do not mean |i mean )?(?:not (?:mixed|together|in (?:one|the same) \w+)"
            rf"|one (?:straight |right )?"
            r"after the other|one then the other|separately|not at the same time|one by one)\b.*"
        ),
    ),
    (
        "units",
        "units",
        Pattern(
            rf"{_OPENS}(?:put|set|change|switch|turn|make) (?:it|them|that) (?:back )?(?:to )?(?:the )?(?:us"
            rf"|american"
            r"|imperial|british|uk|english)(?: ones?)?(?: again| please| then)*"
        ),
    ),
    (
        "works_on",
        "choose_agent",
        Pattern(
            rf"{_OPENS}what (?:would|does|will|might|else would)(?: then| ,)*"
            rf"|{_OPENS}what (?:should|can|could|do|shall) i (?:use|take|try|buy|get)(?: instead| then"
            rf"| for (?:it|that))*"
        ),
    ),
    (
        "works_on",
        "works_on",
        Pattern(
            rf"{_OPENS}(?:at )?(?:how strong|what strength|what mix)(?: then| is that| for (?:that|it)"
            rf"|(?: would| does| should|)(?: it)?(?: have| need)? to be)*"
        ),
    ),
    (
        "surface",
        "choose_agent",
        Pattern(
            rf"{_OPENS}what (?:would be|is|should|can|could|do|would)(?: \w+){{0,3}} (?:better|safe|instead|kinder)"
            r"(?: for (?:it|that)| then| instead)*"
        ),
    ),
    (
        "wound",
        "wound",
        Pattern(
            rf"{_OPENS}(?:what )?(?:if|when) (?:i|it|we)\b.*\b(?:weak\w*|dilut\w*|water\w*|little|drop"
            rf"|careful\w*|vet)\b.*"
            rf"|{_OPENS}what about (?:just )?(?:adding|putting|dabbing|using)\b.*"
        ),
    ),
    (
        "pour_away",
        "pour_away",
        Pattern(
            rf"{_OPENS}(?:how about|what about|what if|could it go|can it go)? ?(?:in|on|into|onto|down"
            rf"|over) (?:the )?"
            r"(?:(?!sink|drain|toilet)\w+ ){0,3}?(?:grass|garden|lawn|yard|gutter|street|gravel|flower ?beds?"
            r"|compost|bushes"
            r"|hedge|patio|ditch|field|pond)\b.*"
            rf"|{_OPENS}the (?:neat|undiluted|leftover|strong) (?:concentrate|stuff|AGENT"
            rf"|STOCK) ?,? (?:the )?same \w+"
        ),
    ),
    (
        "store_it",
        "store_it",
        Pattern(
            rf"{_OPENS}(?:would|will|is|can|could|does|how about|what about)?(?: \w+)*? ?(?:the |a "
            rf"|my )?(?:shed|garage|fridge"
            r"|freezer|cupboard|cellar|attic|loft|bathroom|kitchen|balcony|car|hall|porch|greenhouse|utility room"
            r"|under the sink|windowsill)\b(?!.*(?:AGENT|STOCK|BOTTLE)).*"
        ),
    ),
    (
        "bleach_now",
        "store_it",
        Pattern(
            rf"{_OPENS}(?:where would it|would it|what if it|how about in|would (?:the|a)) .*\b(?:last|keep"
            rf"|longer|better off"
            r"|garage|fridge|cellar|shed|cupboard)\b(?!.*(?:DURATION|NUMBER)).*"
        ),
    ),
    (
        "treat_item",
        "treat_item",
        Pattern(
            rf"{_OPENS}(?:at )?(?:how (?:many degrees|hot|long|warm)"
            rf"|what temperature)(?: and (?:for )?(?:how (?:many "
            r"(?:degrees|minutes)|hot|long|warm)|what temperature))?(?: then| for| in all)*"
        ),
    ),
    (
        "share_tool",
        "treat_item",
        Pattern(
            rf"{_OPENS}how (?:do|should|would|can) i (?:do|clean|wash|disinfect|treat|get) them(?: clean"
            rf"| then| first)*"
        ),
    ),
    (
        "order",
        "order",
        Pattern(
            rf"{_OPENS}(?:where|when) (?:does|do|would|should) (?:the |my )?(?:\w+ )?(?:ANIMAL"
            rf"|ENCLOSURE)(?: \w+)? (?:come|go|fit)\b.*"
        ),
    ),
    (
        "stock_left",
        "stock_left",
        Pattern(
            rf"{_OPENS}how (?:many|much)\b.*\b(?:bottles?|fills?|cleans?|times|goes|rounds?)\b.*\b(?:do"
            rf"|last|make|get|that|it)\b.*"
        ),
    ),
    (
        "mix_strength",
        "mix_strength",
        Pattern(
            rf"{_OPENS}(?:what is (?:that|it) )?(?:in|as) (?:ppm|parts per \w+|percent|a percentage)(?: then"
            rf"| please)*"
        ),
    ),
)
"""The question just answered, which question goes on from it, and how that is said."""
_IF_RINSED = Pattern(
    rf"{_OPENS}(?:what |even |and )?(?:if\b|when (?:i|we|they|it)\b).*\b(?:rins\w*|wash\w*|dr(?:y|ied)|clean\w*"
    rf"|soap\w*|disinfect\w*"
    rf"|bleach\w*"
    r"|boil\w*|soak\w*|scrub\w*|wip\w+)\b(?!.*(?:ENCLOSURE|ANIMAL)).*",
    "if",
    "when",
)
""" "What if I rinse in between", after whether two may meet, or a tool may be shared: the answer tells of that."""
_WASHED_THEM = Pattern(
    rf"{_OPENS}(?:i|we|they|it)(?: have| had| are| is| were| was| just| only| all| been| did)* (?:gave (?:them|it) a"
    r"|washed|soaped|bleached|disinfected|boiled|scrubbed|cleaned|rinsed)\b(?!.*(?:ENCLOSURE|ANIMAL)).*",
    *("wash", "soap", "bleach", "disinfect", "boil", "scrub", "clean", "rinse", "gave"),
)
_TROD_IN_IT = Pattern(
    rf"{_OPENS}(?:i |we |i have |i just |my \w+ |he |she )*(?:trod|trodden|stepped|stood|knelt|walked|slipped|sat"
    rf"|put my"
    r" (?:bare )?(?:foot|feet|hand|hands|knee))(?: right)? (?:in|on|into|through|onto) (?:it|that|the puddle)\b"
    r"(?!.*\b(?:boots?|shoes?|wellies|gloves? on)\b).*",
    *("trod", "step", "stood", "knelt", "walk", "slip", "sat", "put"),
)
_BEGUN_WITH = Pattern(
    rf"{_OPENS}(?:i meant |i mean |make (?:that|it) |it is |it was |it should be |rather |use |using |with |from "
    rf"|the |my )*"
    r"(?:BOTTLE|AGENT|STOCK)(?: one| bottle)?(?:(?: i meant| i mean| actually| instead| rather| sorry"
    r"| please)*)"
    r"(?: ?,.*)?",
    *("BOTTLE", "AGENT", "STOCK"),
)
_MARKED = Pattern(r"\b(?:i meant|i mean|make (?:that|it)|instead|actually|rather|sorry|no|wait)\b")


def plainly_on(look: Look) -> Reading | None:
    """The question that goes on; None: it is something else, or nothing was answered just now."""
    begun = _begun_with_another(look)
    if begun is not None:
        return begun
    met = _with_what_was_spilled(look)
    if met is not None:
        return met
    before, plain = look.world.talk.just_answered, look.parsed.plain.strip(" .!?,")
    if before is None or before.doubts:
        return None
    if before.intent == "spill" and _TROD_IN_IT.fullmatch(plain) is not None:
        return look.reading("splash", Slots(place="skin", victim="person"), BY_RULE)
    open_ones = any(is_open(round_) for round_ in look.world.state.rounds.values())
    if before.intent == "share_tool" and not open_ones and _WASHED_THEM.fullmatch(plain) is not None:
        return _again(look, before, "share_tool")
    if before.intent in ("together", "share_tool") and _IF_RINSED.fullmatch(plain) is not None:
        return _again(look, before, before.intent)
    if look.claims.done and before.intent != "units":
        return None
    rows = (row for row in _ON if row[0] == before.intent)
    return next((_again(look, before, intent) for _, intent, said in rows if said.fullmatch(plain) is not None), None)


def _with_what_was_spilled(look: Look) -> Reading | None:
    """ "Can I just mop it up with the vinegar", right after bleach was spilled: whether the two may meet."""
    last = look.world.talk.last
    spilled = last.values.get("agent") if last is not None and last.intent == "spill" else None
    if spilled is None or _MOPPED.search(look.parsed.plain) is None:
        return None
    slots = look.slots("together")
    named = agents_of(products_by_colour(look.parsed, look.world.household)[1], look.world)
    if len(named) != 1 or named[0] == spilled:
        return None
    slots = replace(slots, agents=(str(spilled), named[0]), bottles=(), stocks=(), steps=(), choices=(), unknown=())
    return look.reading("together", slots, BY_RULE)


_MOPPED = Pattern(
    r"\b(?:mop|wipe|soak|clean|rinse|wash|neutrali[sz]e|dilute|cover)(?: \w+)? (?:it|that|this)\b"
    r"|\b(?:use|pour|put|tip|throw|chuck)\b.* (?:on|over|onto|in) (?:it|that|this)\b"
)
"""What is to be done with what was spilled."""


def _again(look: Look, before: Reading, intent: str) -> Reading:
    slots = before.slots
    if intent == "choose_agent":
        slots = replace(Slots(), organisms=slots.organisms, materials=slots.materials, enclosures=slots.enclosures)
    if intent == "quarantine":
        slots = replace(slots, setting=ASKED_WHY)
    if intent == "splash":
        slots = replace(slots, asked_of_harm="again")  # first aid once more, and no new clock
    if intent == "units":
        slots = look.slots("units")
    return Reading(look.parsed.text, intent, slots, BY_RULE, look.nearest, (), look.spoken)


def _begun_with_another(look: Look) -> Reading | None:
    """ "With the pink bottle I meant", right after a clean was begun: begun with that."""
    last, before = look.world.talk.last, look.world.talk.last_reading
    if last is None or before is None or last.intent != "start" or last.outcome is not Outcome.ANSWER:
        return None
    plain = look.parsed.plain.strip(" .!,")
    if before.intent != "start" or look.claims.done or plain.endswith("?"):
        return None
    found, slots = _BEGUN_WITH.fullmatch(plain), look.slots("start")
    marked = found is not None and _MARKED.search(plain.split(" , ")[0]) is not None
    named = slots.bottles or slots.stocks or slots.agents
    if not marked or not named or slots.choices or len(slots.bottles) > 1:
        return None
    begun = (look.world.state.rounds.get(name) for name in last.values.get("enclosures") or ())
    nothing_done = not any(round_.done for round_ in begun if round_ is not None)
    meant = replace(before.slots, bottles=slots.bottles, stocks=slots.stocks, agents=slots.agents)
    meant = replace(meant, start_over=True if nothing_done else None)
    return look.reading("start", meant, BY_RULE)
