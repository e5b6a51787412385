/** What an assessment says: findings with their numbers and fixes, facts that were missing, levels to aim at. */
@NullMarked
package akin.model.finding;

import org.jspecify.annotations.NullMarked;
