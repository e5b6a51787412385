/** The sample productions and the assessments they must give. */
@org.jspecify.annotations.NullMarked
package akin.engine.samples;
