package akin.engine.equip;

import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.model.tone.CodeScale;
import akin.model.tone.CurveForm;
import akin.model.tone.Encoding;
import akin.model.tone.Piece;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads an encoding's data file. */
final class Encodings {

    private static final int VERSION = 1;

    private Encodings() {}

    /** An encoding as it is written. */
    record EncodingSheet(
            @JsonProperty(required = true) Integer akinEncoding,
            @Nullable List<String> overrides,
            @JsonProperty(required = true) String id,
            @JsonProperty(required = true) String name,
            @JsonProperty(required = true) Encoding.Kind kind,
            @JsonProperty(required = true) CodeScale codeScale,
            @JsonProperty(required = true) List<PieceSheet> pieces,
            @Nullable Double inputScale,
            @Nullable Double referenceWhite,
            @Nullable Double clipCode,
            @JsonProperty(required = true) String source,
            @Nullable String note) {}

    /** A piece of a curve as it is written: an upper bound, and one form. */
    record PieceSheet(
            @Nullable Double until,
            CurveForm.@Nullable Linear linear,
            CurveForm.@Nullable Log log,
            CurveForm.@Nullable Power power,
            CurveForm.@Nullable Pq pq) {}

    /** A packaged encoding; its file is named after it. */
    static Encoding bind(Binder binder, Document document, String id) {
        EncodingSheet sheet = sheet(binder, document);
        if (!sheet.id().equals(id)) {
            throw document.error("id", "the file's name says " + id);
        }
        return encoding(document, sheet);
    }

    /** The file as it is written. */
    static EncodingSheet sheet(Binder binder, Document document) {
        EncodingSheet sheet = binder.bind(document, EncodingSheet.class);
        if (sheet.akinEncoding() != VERSION) {
            throw document.error("akin-encoding", "an encoding file starts with akin-encoding: " + VERSION);
        }
        return sheet;
    }

    /** The encoding that a file gives. */
    static Encoding encoding(Document document, EncodingSheet sheet) {
        try {
            return new Encoding(
                    sheet.id(),
                    sheet.name(),
                    sheet.kind(),
                    sheet.pieces().stream()
                            .map(p -> Piece.of(p.until(), p.linear(), p.log(), p.power(), p.pq()))
                            .toList(),
                    sheet.inputScale() == null ? 1 : sheet.inputScale(),
                    sheet.referenceWhite(),
                    sheet.codeScale(),
                    sheet.clipCode(),
                    sheet.source(),
                    sheet.note());
        } catch (IllegalArgumentException e) {
            throw document.error("pieces", String.valueOf(e.getMessage()));
        }
    }
}
