package soundings.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import soundings.notebook.Item;
import soundings.notebook.Notebook;
import soundings.notebook.Section;

/** The whole page. The same notebook gives the same bytes. */
public final class HtmlPage {
    /** No script, no frame, no request: a page that opens from an e-mail or a memory stick as it is. */
    private static final String POLICY =
            "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";

    private HtmlPage() {}

    public static String of(Notebook notebook) {
        return page(
                notebook.title() + ", " + notebook.subtitle(),
                header(notebook.title(), notebook.subtitle()) + contents(notebook),
                sections(notebook));
    }

    /** A page of the same look without a table of contents; {@code inside} is HTML, the title and subtitle are words. */
    static String framed(String title, String subtitle, String inside) {
        return page(title + ", " + subtitle, header(title, subtitle), inside);
    }

    private static String page(String name, String head, String main) {
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta http-equiv=\"Content-Security-Policy\" content=\"" + POLICY + "\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
                + "<meta name=\"color-scheme\" content=\"light dark\">\n"
                + "<title>" + Html.text(name) + "</title>\n<style>\n" + style()
                + "</style>\n</head>\n<body>\n<a class=\"skip\" href=\"#main\">To the report</a>\n" + head
                + "<main id=\"main\">\n" + main + "</main>\n</body>\n</html>\n";
    }

    private static String header(String title, String subtitle) {
        return "<header><h1>" + Html.text(title) + "</h1><p>" + Html.text(subtitle) + "</p></header>\n";
    }

    private static String contents(Notebook notebook) {
        String entries = notebook.sections().stream()
                .filter(s -> s.depth() == 2 && !s.heading().isEmpty())
                .map(s -> "<li>" + Html.link(s.id(), Html.text(s.heading())) + "</li>")
                .collect(Collectors.joining());
        return "<nav aria-label=\"Contents\"><ul>" + entries + "</ul></nav>\n";
    }

    private static String sections(Notebook notebook) {
        StringBuilder html = new StringBuilder();
        boolean open = false;
        for (Section section : notebook.sections()) {
            boolean test = isTest(section);
            html.append(test && !open ? "<div class=\"tests\">\n" : !test && open ? "</div>\n" : "");
            html.append(section(section));
            open = test;
        }
        return html.append(open ? "</div>\n" : "").toString();
    }

    /** Parts with a chart through time stand side by side on paper. */
    private static boolean isTest(Section section) {
        return section.depth() == 3
                && section.items().stream()
                        .anyMatch(i -> i.match(
                                p -> false,
                                t -> false,
                                c -> c.spec().match(time -> true, range -> false, spark -> false),
                                w -> false,
                                a -> false));
    }

    private static String section(Section section) {
        String heading = section.heading().isEmpty()
                ? ""
                : "<h" + section.depth() + ">" + Html.text(section.heading()) + "</h" + section.depth() + ">\n";
        return "<section class=\"d" + section.depth() + "\" id=\"" + Html.text(section.id()) + "\">\n" + heading
                + items(section.items()) + "</section>\n";
    }

    private static String items(List<Item> items) {
        return items.stream()
                .map(item -> item.match(ProseHtml::of, TableHtml::of, ChartHtml::of, WorkingHtml::of, ActionsHtml::of))
                .collect(Collectors.joining());
    }

    private static String style() {
        try (InputStream in = HtmlPage.class.getResourceAsStream("/soundings/templates/style.css")) {
            if (in == null) {
                throw new IllegalStateException("the program was built without report-templates/style.css");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
