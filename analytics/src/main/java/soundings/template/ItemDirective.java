package soundings.template;

import freemarker.core.Environment;
import freemarker.template.TemplateDirectiveBody;
import freemarker.template.TemplateDirectiveModel;
import freemarker.template.TemplateException;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateNumberModel;
import freemarker.template.TemplateScalarModel;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** {@code <@levels tank=... test=.../>}: notes the call and leaves a place for the item. */
final class ItemDirective implements TemplateDirectiveModel {
    private final Signature signature;
    private final List<Printed.Call> calls;

    ItemDirective(Signature signature, List<Printed.Call> calls) {
        this.signature = signature;
        this.calls = calls;
    }

    @Override
    @SuppressWarnings("rawtypes")
    public void execute(
            Environment env, @Nullable Map params, TemplateModel[] loopVars, @Nullable TemplateDirectiveBody body)
            throws TemplateException, IOException {
        Map<String, String> arguments = new LinkedHashMap<>();
        if (params != null) {
            for (Object entry : params.entrySet()) {
                Map.Entry<?, ?> argument = (Map.Entry<?, ?>) entry;
                arguments.put(String.valueOf(argument.getKey()), text(argument.getValue(), env));
            }
        }
        if (body != null || !new TreeSet<>(arguments.keySet()).equals(new TreeSet<>(signature.arguments()))) {
            throw new TemplateException("write it as " + signature, env);
        }
        env.getOut().write("\n\n" + Printed.place(calls.size()) + "\n\n");
        calls.add(new Printed.Call(signature.name(), arguments, line(env)));
    }

    private String text(@Nullable Object value, Environment env) throws TemplateException {
        if (value instanceof TemplateScalarModel words) {
            return words.getAsString();
        }
        if (value instanceof TemplateNumberModel number) {
            return number.getAsNumber().toString();
        }
        throw new TemplateException("an argument is a text or a number; write it as " + signature, env);
    }

    private static int line(Environment env) {
        Integer line = new TemplateException("", env).getLineNumber();
        return line == null ? 0 : line;
    }
}
