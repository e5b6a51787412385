package akin.engine.assess;

import akin.model.finding.WhereFound;

/**
 * A rule that could not look at a unit, since a fact is not known.
 *
 * @param rule id of the rule
 * @param unit name of the unit
 * @param missing dotted path of the fact, in the rig file or in the gear catalogue
 * @param where where such a fact is usually found
 */
public record Unchecked(String rule, String unit, String missing, WhereFound where) {}
