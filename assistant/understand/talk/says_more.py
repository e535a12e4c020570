"""What a turn says besides that it goes on: words that an answer given once more must not pass over.

A likeness is enough to say the same again to "are you sure?". It isn't to "a bit of fizz coming off it", nor to
"there's vinegar already in it"; and what "in boiling water" would change is left out aloud, not in silence.
"""

from __future__ import annotations

from assistant.understand.text.patterns import Pattern

TOO = Pattern(r"\b(?:too|as well|also|same|likewise|another|ditto)\b|^(?:and|then|plus)\b")
""" "The pink one as well": by these something told is told of another one."""
DENIED = Pattern(
    r"\b(?:not|never|no|none|forg[eo]t\w*|missed|skipp\w+|left out|without|except|but|bar|still|only|half|later"
    r"|tomorrow|ok|fine|leaks?|leaking|empty|mistake|wrong)\b"
)
"""By these it isn't, or not of all of it."""
FURTHER_BACK = Pattern(
    r"\b(?:one|step|that|thing)s? (?:more|before|too|as well)\b|\b(?:another|once more|further|again)\b"
)
""" "One more back", after something was taken back."""
ALARMS = Pattern(
    r"\b(?:fizz\w*|foam\w*|froth\w*|bubbl\w*|steam\w*|smok\w*|fumes|hiss\w*|burn(?:s|ing|t)?|sting\w*|swell\w*"
    r"|swollen|slippery|cough\w*|chok\w*|dizzy|faint|throat|drank|drunk|swig|swallow\w*|toddler)\b"
)
"""Signs of gas or harm: for none of these is the answer before good enough..."""
UNEASY = Pattern(
    r"\b(?:mist|vapou?rs?|pop|popped|hot|warm|itch\w*|sore|sneez\w*|sick|chest|breath\w*|eyes?|mouth|lick\w*"
    r"|little one|kids?|child|children|baby|boy|girl|son|daughter|lad|lass|wife|husband|mum|dad|someone|somebody|dog"
    r"|cat|loose|out)\b"
)
"""...nor for these, where nothing is asked: who or what got at it."""
OF_ITS_STATE = Pattern(
    r"\b(?:already|earlier|before|by mistake|grabbed|topped|in it|in there|on it|on top|went on|left over"
    r"|wrong|mixed up|swapped|colou?r|cloudy|pink|yellow|green|old|out of date|expired)\b"
)
"""What became of a bottle or a surface: a product named with these is no other product asked about."""
CHANGES = Pattern(
    r"^(?:and|or|but|with|without|for|on|in|at|if|even|what if|what about|how about|say|though)\b"
    r"|\b(?:if|when|though|instead|double|twice|half|quarter|more|less|stronger|weaker|strong|weak|big|bigger|small"
    r"|smaller|large|tiny|hotter|colder|hot|cold|fan|windows?|water|watered|diluted|undiluted|concentrated|neat|boiling"
    r"|label|spoons?|tablespoons?|teaspoons?|cup|cap|glug|dash|not|never|no|without|forgot|lost|only|just|date|old)\b"
)
"""What may change an answer that is given once more without it."""
