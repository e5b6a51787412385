/** The report as one page for a browser: the assessment in words, the pictures of its rig beside it. */
@NullMarked
package akin.engine.report.html;

import org.jspecify.annotations.NullMarked;
