package soundings.template;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;

/** The other side of {@link ChildRun}: one request on standard input, one answer on standard output. */
public final class Child {
    private Child() {}

    public static void main(String[] args) throws IOException {
        DataInputStream from = new DataInputStream(new BufferedInputStream(System.in));
        Wire.Request request = Wire.readRequest(from);
        DataOutputStream to = new DataOutputStream(new BufferedOutputStream(System.out));
        answer(request, to);
        to.flush();
    }

    private static void answer(Wire.Request request, DataOutputStream to) throws IOException {
        try {
            Wire.writeAnswer(to, TemplateRun.of(request.source(), request.model(), request.items()));
        } catch (TemplateProblem problem) {
            Wire.writeProblem(to, problem);
        } catch (OutOfMemoryError e) {
            Wire.writeProblem(to, TemplateProblem.at(request.source().name(), 0, "it needs too much memory"));
        }
    }
}
