package streamwright.file;

/** An object some of whose fields refer to what is around the file; it is known before they are declared. */
abstract class Referring<T> extends Struct<T> {
    protected final Around around;

    Referring(String thing, Around around) {
        super(thing);
        this.around = around;
    }
}
