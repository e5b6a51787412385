package akin.engine;

public final class Main {
    private Main() {}

    public static void main(String[] a) {
        System.out.println("hi");
    }
}
