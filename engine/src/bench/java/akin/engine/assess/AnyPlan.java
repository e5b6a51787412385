package akin.engine.assess;

import ai.timefold.solver.core.impl.domain.valuerange.AbstractCountableValueRange;
import akin.model.rig.Settings;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** Every plan is allowed; only those to start from are told one by one, since there are hundreds of millions. */
final class AnyPlan extends AbstractCountableValueRange<Settings> {
    private final List<Settings> starts;

    AnyPlan(List<Settings> starts) {
        this.starts = starts;
    }

    @Override
    public boolean contains(Settings settings) {
        return true;
    }

    @Override
    public long getSize() {
        return starts.size();
    }

    @Override
    public Settings get(long index) {
        return starts.get(Math.toIntExact(index));
    }

    @Override
    public Iterator<Settings> createOriginalIterator() {
        return starts.iterator();
    }

    @Override
    public Iterator<Settings> createRandomIterator(Random random) {
        return Stream.generate(() -> starts.get(random.nextInt(starts.size()))).iterator();
    }
}
