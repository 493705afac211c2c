package pairwright.session.allocation;

/** What phantom power on its channel is to a feed. */
public enum PhantomNeed {
    /** It works only with it. */
    NEEDED,
    /** It must never see it, as a passive ribbon. */
    FORBIDDEN,
    /** It neither needs it nor minds it, and draws nothing. */
    ANY
}
