package akin.model.rig;

import akin.model.gear.Adapter;
import akin.model.gear.Lens;
import akin.model.quantity.NeutralDensity;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is on the van for the units to use.
 *
 * @param filters neutral densities, those that units are to carry included; null when not listed
 * @param lenses lenses; null when not listed
 * @param adapters adapters; null when not listed
 */
public record Kit(
        @Nullable List<NeutralDensity> filters,
        @Nullable List<Lens> lenses,
        @Nullable List<Adapter> adapters) {}
