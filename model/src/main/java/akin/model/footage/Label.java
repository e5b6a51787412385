package akin.model.footage;

import akin.model.timing.Timecode;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The timecode of the first frame of a clip.
 *
 * @param text {@code HH:MM:SS:FF} counted non-drop, {@code HH:MM:SS;FF} counted drop-frame
 */
public record Label(String text) {

    /** How it may be written. */
    public static final String ALLOWED = "HH:MM:SS:FF, or HH:MM:SS;FF for drop-frame";

    private static final Pattern FORM = Pattern.compile("([01][0-9]|2[0-3]):[0-5][0-9]:[0-5][0-9][:;]([0-9]{2})");
    private static final int SEPARATOR = 8;

    /** @throws IllegalArgumentException if the text is no timecode */
    public Label {
        if (!FORM.matcher(text).matches()) {
            throw new IllegalArgumentException("read '" + text + "'; a timecode is written " + ALLOWED);
        }
    }

    /** True when it is counted drop-frame, as it is written. */
    public boolean drop() {
        return text.charAt(SEPARATOR) == ';';
    }

    /** The number in its last place: the frame within its second, from 0. */
    public int frame() {
        Matcher parts = FORM.matcher(text);
        if (!parts.matches()) {
            throw new IllegalStateException(text);
        }
        return Integer.parseInt(parts.group(2));
    }

    /** Frames since midnight at this rate; none where no frame of this rate and counting bears the label. */
    public OptionalLong frameNumber(BigFraction rate) {
        try {
            return OptionalLong.of(Timecode.frameNumber(text, rate));
        } catch (IllegalArgumentException notOfThisRate) {
            return OptionalLong.empty();
        }
    }

    @Override
    public String toString() {
        return text;
    }
}
