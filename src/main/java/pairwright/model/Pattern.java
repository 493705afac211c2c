package pairwright.model;

/** The pickup patterns. */
public enum Pattern implements Word {
    OMNI("omni"),
    WIDE_CARDIOID("wide-cardioid"),
    CARDIOID("cardioid"),
    SUPERCARDIOID("supercardioid"),
    HYPERCARDIOID("hypercardioid"),
    FIGURE_8("figure-8"),
    HALF_OMNI("half-omni"),
    HALF_CARDIOID("half-cardioid"),
    LOBAR("lobar"),
    CONTACT("contact"),
    ELECTRICAL("electrical");

    private final String id;

    Pattern(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
