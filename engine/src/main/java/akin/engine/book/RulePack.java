package akin.engine.book;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A folder of rules that somebody has written for themselves: DRL files, and a page for each rule.
 *
 * @param name how the folder is called in messages
 * @param files text of each file by its path below the folder, with slashes
 */
public record RulePack(String name, SortedMap<String, String> files) {

    /** How a file of rules ends. */
    public static final String DRL = ".drl";

    /** How a page ends. */
    public static final String PAGE = ".md";

    private static final String ABOUT = "README.md";

    /** Copies the files. */
    public RulePack {
        files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
    }

    /** True for a file that belongs to the rules of a pack, by its name. */
    public static boolean holds(String file) {
        return file.endsWith(DRL) || file.endsWith(PAGE);
    }

    /** The files of rules, by path. */
    public Map<String, String> rules() {
        return ending(DRL);
    }

    /** The pages, by path; what a README says is for people alone. */
    public Map<String, String> pages() {
        Map<String, String> pages = ending(PAGE);
        pages.keySet().removeIf(path -> path.equals(ABOUT) || path.endsWith("/" + ABOUT));
        return pages;
    }

    private Map<String, String> ending(String end) {
        Map<String, String> ending = new TreeMap<>(files);
        ending.keySet().removeIf(path -> !path.endsWith(end));
        return ending;
    }

    /** What a file is called in messages. */
    public String called(String path) {
        return name.endsWith("/") ? name + path : name + "/" + path;
    }

    /**
     * SHA-256 over all paths and texts, in 64 hexadecimal digits: another digit, space or name anywhere makes it another.
     */
    public String digest() {
        MessageDigest sha = sha256();
        files.forEach((path, text) -> {
            for (String part : new String[] {path, text}) {
                byte[] bytes = part.getBytes(StandardCharsets.UTF_8);
                // Lengths in front, so that no text can pass for the end of one file and the start of the next.
                sha.update((bytes.length + ":").getBytes(StandardCharsets.UTF_8));
                sha.update(bytes);
            }
        });
        return HexFormat.of().formatHex(sha.digest());
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
