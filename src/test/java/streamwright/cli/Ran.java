package streamwright.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** A command line, run from outside: arguments in; exit status, stdout and stderr out. */
record Ran(int status, String out, String err) {
    static Ran of(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Main.run(new PrintWriter(out), new PrintWriter(err, true), args);
        return new Ran(status, out.toString(), err.toString());
    }
}
