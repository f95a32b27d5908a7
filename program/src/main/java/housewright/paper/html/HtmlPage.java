package housewright.paper.html;

import housewright.paper.Sheet;
import java.util.List;

/** One paper as one page that needs nothing else. */
public final class HtmlPage {
    private HtmlPage() {}

    /**
     * @param hall whose paper it is
     * @param title of the paper
     * @param question that it answers
     * @param home the address of the contents page; empty for none
     */
    public static String of(String hall, String title, String question, List<Issued> sheets, String home) {
        Markup markup = new Markup();
        for (Issued issued : sheets) {
            Sheet sheet = issued.sheet();
            markup.raw(
                    "<section id=\"" + Html.escaped(sheet.id()) + (sheet.large() ? "\" class=\"large" : "") + "\">\n");
            markup.head(sheet.title(), sheet.recipient(), question).blocks(issued.blocks());
            markup.raw("<p class=\"foot\">" + Html.escaped(hall) + " · " + Html.escaped(title) + " · revision "
                    + Html.escaped(issued.revision()) + " · " + Html.escaped(issued.date()) + "</p>\n</section>\n");
        }
        String back = home.isEmpty() ? "" : "<p><a href=\"" + Html.escaped(home) + "\">All papers</a></p>\n";
        return page(title + ", " + hall, back + markup);
    }

    /**
     * A page with other content.
     *
     * @param body well-formed markup
     */
    public static String page(String title, String body) {
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>"
                + Html.escaped(title) + "</title>\n<style>\n" + STYLE + "</style>\n</head>\n<body>\n" + body
                + "</body>\n</html>\n";
    }

    private static final String STYLE = """
            :root { color-scheme: light dark; --ground: #FBFAF7; --ink: #1D2226; --line: #D8D4CB; --second: #5B6168; --accent: #0B5D66; }
            @media (prefers-color-scheme: dark) { :root { --ground: #23221F; --ink: #CFC9BE; --line: #3D3B36; --second: #9C968A; --accent: #62AAB0; } }
            body { margin: 24px auto; padding: 0 16px; max-width: 1400px; background: var(--ground); color: var(--ink); font: 15px/1.45 system-ui, sans-serif; font-variant-numeric: tabular-nums; }
            a { color: var(--accent); }
            h1 { font-size: 22px; margin: 24px 0 4px; }
            h2 { font-size: 15px; margin: 16px 0 4px; }
            .for, .foot { color: var(--second); margin: 4px 0 12px; }
            .caution { border: 1px solid var(--ink); padding: 8px 12px; max-width: 60em; }
            .table { overflow-x: auto; margin: 12px 0; }
            table { border-collapse: collapse; min-width: 100%; font-size: 13.5px; }
            th, td { text-align: left; vertical-align: top; padding: 4px 8px; border-bottom: 1px solid var(--line); }
            th { color: var(--second); font-weight: 600; }
            td.id { font-family: ui-monospace, monospace; white-space: nowrap; }
            .number { text-align: right; white-space: nowrap; }
            tr.changed td:first-child { box-shadow: inset 4px 0 0 var(--ink); }
            .blank { display: inline-block; min-width: 4em; border-bottom: 1px solid var(--second); }
            .box { display: inline-block; width: 1em; height: 1em; border: 1px solid var(--ink); }
            .drawing { overflow-x: auto; margin: 12px 0; }
            .drawing svg { max-width: 100%; height: auto; min-width: 640px; }
            .large, .large table { font-size: 19px; line-height: 1.4; }
            .large .steps { max-width: 60em; }
            .labels { position: relative; max-width: 100%; overflow: auto; background: #fff; color: #1D2226; margin: 12px 0; }
            .label { position: absolute; overflow: hidden; outline: 1px solid #D8D4CB; }
            .said { position: absolute; white-space: nowrap; line-height: 1.15; }
            .said .first { font-weight: 600; }
            .code { position: absolute; }
            .code svg { display: block; }
            @media print { :root { --ground: #fff; --ink: #1D2226; --line: #D8D4CB; --second: #1D2226; } section { break-before: page; } a { display: none; } }
            """;
}
