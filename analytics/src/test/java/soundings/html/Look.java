package soundings.html;

import java.nio.file.Files;
import java.nio.file.Path;
import soundings.notebook.MarineClub;
import soundings.notebook.Notebooks;
import soundings.template.Shipped;

/** Writes the marine club's report to a file, to look at while changing templates and style. */
final class Look {
    private Look() {}

    private static long cpu() {
        return java.lang.management.ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    public static void main(String[] args) throws Exception {
        Path out = Path.of(args[0]);
        String name = args.length > 1 ? args[1] : "monthly";
        long begun = cpu();
        var notebook = Notebooks.run(Shipped.named(name), MarineClub.findings());
        long noted = cpu();
        String page = HtmlPage.of(notebook);
        long drawn = cpu();
        Files.writeString(out, page);
        System.out.printf(
                "%d charts, %d KB, processor time: notebook %d ms, page %d ms%n",
                notebook.charts().count(),
                page.length() / 1000,
                (noted - begun) / 1_000_000,
                (drawn - noted) / 1_000_000);
    }
}
