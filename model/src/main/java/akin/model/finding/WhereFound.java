package akin.model.finding;

/** Where a fact that is missing is usually found. */
public enum WhereFound {
    /** The rig file itself: somebody has still to plan it. */
    PLAN("plan it in the rig file"),
    /** The maker's manual. */
    MANUAL("the maker's manual"),
    /** The maker's specification sheet. */
    SPEC_SHEET("the maker's specification sheet"),
    /** A test that the crew can shoot. */
    TEST("a test the crew can shoot"),
    /** Engraved on the lens, or its data sheet. */
    LENS_MARKINGS("the lens's engravings or data sheet"),
    /** The kit list of the hire. */
    KIT_LIST("the kit list"),
    /** The clip, or what its camera or recorder wrote beside it. */
    CLIP("the clip leaves it open; look at its camera's menu or report"),
    /** The rule itself, which failed. */
    RULE("the rule failed: whoever wrote it can mend it");

    private final String words;

    WhereFound(String words) {
        this.words = words;
    }

    /** The place in words. */
    public String words() {
        return words;
    }
}
