package pairwright.bench;

/** The least a program can do. */
public final class Hello {
    private Hello() {
    }

    /** Says hello. */
    public static void main(String[] arguments) {
        System.out.println("hello");
    }
}
