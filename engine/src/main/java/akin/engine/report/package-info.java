/** From an assessment to text or JSON. Pure functions: nothing here reads, looks up or decides. */
@NullMarked
package akin.engine.report;

import org.jspecify.annotations.NullMarked;
