/** The command line: the only room that knows streams, files and exit codes. */
@NullMarked
package akin.engine.cli;

import org.jspecify.annotations.NullMarked;
