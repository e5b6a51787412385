package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports that are files of their own: pages for a browser and for paper. */
class ReportFilesTest {

    private static final String MARKET = "../samples/night-market/rig.yaml";
    private static final String LANTERN = "../samples/lantern-room/rig.yaml";

    @TempDir
    Path folder;

    @Test
    void aPageIsWrittenForOneRig() throws IOException {
        Path page = folder.resolve("page.html");
        Run run = Run.of("check", MARKET, "--format", "html", "--out", page.toString());
        assertThat(run.code()).as(run.err()).isEqualTo(Akin.FAILS);
        assertThat(run.out()).isEmpty();
        assertThat(page).content().startsWith("<!DOCTYPE html>").contains("<h1>Night Market</h1>", "role=\"img\"");
        Run piped = Run.of("check", MARKET, "--format", "html");
        assertThat(piped.out()).isEqualTo(Files.readString(page));
    }

    @Test
    void aPageOfTwoRigsIsRefused() {
        Said.of(Run.of("check", MARKET, LANTERN, "--format", "html"), "check").says(List.of("one rig file"));
    }

    @Test
    void cardsAreWrittenAsPdfToAFileOnly() throws IOException {
        Path cards = folder.resolve("cards.pdf");
        assertThat(Run.of("card", MARKET, "--format", "pdf", "--out", cards.toString()))
                .isEqualTo(new Run(Akin.PASSES, "", ""));
        assertThat(Files.readAllBytes(cards))
                .startsWith("%PDF-1.7".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        Said.of(Run.of("card", MARKET, "--format", "pdf"), "card").says(List.of("--out"));
    }
}
