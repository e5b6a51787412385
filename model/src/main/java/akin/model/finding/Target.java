package akin.model.finding;

/**
 * A level to aim at, which is no fault: where an 18 % card must sit on this unit's own exposure aid.
 *
 * @param unit name of the unit (the camera)
 * @param name kebab-case name, such as {@code middle-grey}
 * @param value the level
 * @param scale what the number is read on, such as {@code %} or {@code code of 1023}
 * @param aid the aid to read it on, in words
 */
public record Target(String unit, String name, double value, String scale, String aid) {}
