package akin.engine.cli;

import akin.engine.read.BadInput;
import akin.engine.read.ProbedClip;
import akin.engine.read.Say;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/**
 * Runs ffprobe on a clip, where it is installed. It is given the whole path behind {@code file:}, and nothing but local files to
 * open, so that no name of a clip is taken for an option, an address or a list of other files. What it prints and how long it
 * takes are bounded.
 *
 * @param program the program, by its name on the PATH or by its path
 * @param patience how long one clip may take
 */
record Probe(String program, Duration patience) {

    /** The program, unless the call names another. */
    static final String FFPROBE = "ffprobe";

    /** Reading the head of a file takes moments; from a drive that has to spin up, some seconds. */
    static final Duration PATIENCE = Duration.ofSeconds(30);

    private static final int MOST_PRINTED = 1_000_000;
    private static final int MOST_COMPLAINED = 2_000;

    /**
     * What ffprobe prints of a clip.
     *
     * @param clip the file
     * @param name how it was named, for messages
     * @throws BadInput when ffprobe is not there, cannot read the file, or does not come to an end
     */
    String print(Path clip, String name) {
        Process process;
        try {
            process = new ProcessBuilder(List.of(
                            program,
                            "-hide_banner",
                            "-v",
                            "error",
                            "-protocol_whitelist",
                            "file",
                            "-print_format",
                            "json",
                            "-show_format",
                            "-show_streams",
                            "-i",
                            "file:" + clip.toAbsolutePath()))
                    .redirectInput(ProcessBuilder.Redirect.PIPE)
                    .start();
        } catch (IOException e) {
            throw new BadInput(
                    name,
                    "to read clips, " + program
                            + " must be installed (Debian: the package ffmpeg); or save what it prints"
                            + " where it is, and name that: " + ProbedClip.COMMAND + " CLIP > clip.json");
        }
        CompletableFuture<String> printed =
                CompletableFuture.supplyAsync(() -> read(process.getInputStream(), MOST_PRINTED, process));
        CompletableFuture<String> complained =
                CompletableFuture.supplyAsync(() -> read(process.getErrorStream(), MOST_COMPLAINED, null));
        try {
            process.getOutputStream().close();
            if (!process.waitFor(patience.toMillis(), TimeUnit.MILLISECONDS)) {
                throw new BadInput(
                        name,
                        "ffprobe did not come to an end within " + patience.toSeconds() + " s; is the drive there?");
            }
            String text = printed.get(patience.toMillis(), TimeUnit.MILLISECONDS);
            if (text.length() >= MOST_PRINTED) {
                throw new BadInput(name, "ffprobe prints more of this file than of any clip");
            }
            if (process.exitValue() != 0) {
                String why = complained.get(patience.toMillis(), TimeUnit.MILLISECONDS);
                throw new BadInput(name, "ffprobe cannot read this as a clip" + because(why, clip));
            }
            return text;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new BadInput(name, "interrupted while ffprobe read this file");
        } catch (IOException | java.util.concurrent.ExecutionException | java.util.concurrent.TimeoutException e) {
            throw new BadInput(name, "what ffprobe prints of this file cannot be read");
        } finally {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
    }

    /** The last line of a complaint, without the way to the file. */
    private static String because(String complaint, Path clip) {
        List<String> lines = complaint.lines().filter(line -> !line.isBlank()).toList();
        if (lines.isEmpty()) {
            return "";
        }
        String last = lines.get(lines.size() - 1).replace("file:" + clip.toAbsolutePath() + ": ", "");
        return ": " + Say.clean(last);
    }

    /** What a stream gives, up to a bound; a process that gives more is ended. */
    private static String read(InputStream in, int most, @org.jspecify.annotations.Nullable Process toEnd) {
        ByteArrayOutputStream kept = new ByteArrayOutputStream();
        byte[] part = new byte[8192];
        try (in) {
            for (int n = in.read(part); n >= 0; n = in.read(part)) {
                kept.write(part, 0, Math.min(n, most - kept.size()));
                if (kept.size() >= most && toEnd != null) {
                    toEnd.destroyForcibly();
                    break;
                }
            }
        } catch (IOException ended) {
            // The process was ended; what it said until then is kept.
        }
        return kept.toString(StandardCharsets.UTF_8);
    }
}
