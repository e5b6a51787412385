package akin.engine.cli;

import akin.engine.equip.Catalogue;
import akin.engine.equip.Pack;
import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The catalogue by rig file: what comes with Akin, before it the folder {@code akin.d} beside the rig file where there is
 * one, before that the folder that the call names. Each folder is read once.
 */
final class Packs implements Function<String, Catalogue> {

    static final String FOLDER = "akin.d";

    private final Binder binder;
    private final Catalogue first;
    private final @Nullable String folder;
    private final Map<String, Catalogue> byPlace = new ConcurrentHashMap<>();
    private @Nullable Pack named;

    /**
     * The catalogue by rig file.
     *
     * @param folder the folder that the call names; null for none
     * @param first what lies behind everything else
     */
    Packs(Binder binder, @Nullable String folder, Catalogue first) {
        this.binder = binder;
        this.first = first;
        this.folder = folder;
        if (folder != null) {
            named = read(folder);
            if (named.files() == 0) {
                throw new BadInput(folder, "no gear file, named *.yaml, is in this folder");
            }
        }
    }

    private Pack read(String name) {
        return Pack.read(name, Call.path(name), binder);
    }

    /** The catalogue for a rig file, by its name. */
    @Override
    public Catalogue apply(String rig) {
        return byPlace.computeIfAbsent(beside(rig), this::whole);
    }

    /** The folder beside a rig file, named as the rig file is. */
    private static String beside(String rig) {
        Path file = Call.path(rig).getFileName();
        String last = file == null ? "" : file.toString();
        return (rig.endsWith(last) ? rig.substring(0, rig.length() - last.length()) : "") + FOLDER;
    }

    private Catalogue whole(String beside) {
        Catalogue all = Files.exists(Call.path(beside)) && !isNamed(beside) ? first.with(read(beside)) : first;
        Pack more = named;
        return more == null ? all : all.with(more);
    }

    /** The catalogue with the folder that the call names, whatever lies beside a rig file. */
    Catalogue named() {
        return named == null ? first : first.with(named);
    }

    /** True when the folder beside the rig file is the one that the call names. */
    private boolean isNamed(String beside) {
        try {
            return folder != null && Files.isSameFile(Call.path(beside), Call.path(folder));
        } catch (IOException e) {
            return false;
        }
    }
}
