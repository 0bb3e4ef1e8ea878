### Reasons for and against a preparation.

takes-up = { CAPITAL($liquid) } takes up { $share } of what { $herb } contains.
takes-up-none = { CAPITAL($liquid) } does not take up what { $herb } contains.
spirit-takes-up = At { $strength } it takes up { $share } of the { $class } of { $herb }.
takes-nothing = nothing
takes-little = little
takes-some = some
takes-much = much
takes-most = most
resin-not-in-glycerin = Resin and volatile oil do not dissolve in glycerin.
not-usual-inside = It is not usually made for internal use.
not-usual-outside = It is not usually made for external use.
not-usual-as-food = It is not usually made for food.
not-for-class = It does not suit a herb rich in { $class }.
wants-bitter-herbs = Bitters need bitter or aromatic herbs. This one isn't known to be either.
strength-not-reached = You wanted { $wanted }. Your supplies reach { $got } at best.
none-at-hand = You have no { $kind } in your supplies, so this is worked out with { $liquid }.
jar-too-small-for-all = The jar is too small for all of it. It holds { $herb } of the herb.
