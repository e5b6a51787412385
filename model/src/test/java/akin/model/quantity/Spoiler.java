package akin.model.quantity;

import java.util.Random;

/** Makes a text slightly wrong, or wrong in no way that matters. */
final class Spoiler {
    private static final String ODD = "0123456789.,-+/:x× \u00A0°µ%sSmMkKfFtTNDndHz\u0000\n\u202E′″'_eE";

    private Spoiler() {}

    static String spoil(String text, Random random) {
        StringBuilder out = new StringBuilder(text);
        for (int changes = random.nextInt(1, 4); changes > 0 && out.length() > 0; changes--) {
            int at = random.nextInt(out.length());
            char odd = ODD.charAt(random.nextInt(ODD.length()));
            switch (random.nextInt(4)) {
                case 0 -> out.deleteCharAt(at);
                case 1 -> out.insert(at, odd);
                case 2 -> out.setCharAt(at, odd);
                default -> out.insert(at, out.charAt(random.nextInt(out.length())));
            }
        }
        return out.toString();
    }
}
