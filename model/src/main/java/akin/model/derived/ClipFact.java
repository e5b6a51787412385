package akin.model.derived;

/** A fact that follows from one shot clip and the plan of the unit that shot it. */
public interface ClipFact extends Derived {

    /** Name of the clip. */
    String clip();
}
