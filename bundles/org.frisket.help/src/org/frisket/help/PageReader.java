package org.frisket.help;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.frisket.help.HelpPage.Block;
import org.frisket.help.HelpPage.Kind;
import org.frisket.help.HelpPage.Run;

/**
 * Reads a page as it is written: the title after {@code #}, headings after {@code ##}, items after {@code -}, links as
 * {@code [words](page)}. Blank lines part paragraphs; other lines go on with the block before them.
 */
final class PageReader {

	private static final Pattern LINK = Pattern.compile("\\[([^\\]]+)]\\(([a-z]+)\\)");
	private static final String TITLE = "# ";
	private static final String HEADING = "## ";
	private static final String ITEM = "- ";

	private String title = "";
	private final List<Block> blocks = new ArrayList<>();
	private final StringBuilder text = new StringBuilder();
	private Kind kind = Kind.PARAGRAPH;

	private PageReader() {
	}

	static HelpPage read(String id, String source) {
		PageReader reader = new PageReader();
		source.lines().forEach(reader::line);
		reader.end();
		return new HelpPage(id, reader.title, reader.blocks);
	}

	private void line(String line) {
		if (line.startsWith(HEADING)) {
			begin(Kind.HEADING, line.substring(HEADING.length()));
			end();
		} else if (line.startsWith(TITLE)) {
			title = line.substring(TITLE.length()).strip();
		} else if (line.startsWith(ITEM)) {
			begin(Kind.ITEM, line.substring(ITEM.length()));
		} else if (line.isBlank()) {
			end();
		} else if (text.isEmpty()) {
			begin(Kind.PARAGRAPH, line);
		} else {
			text.append(' ').append(line.strip());
		}
	}

	private void begin(Kind newKind, String line) {
		end();
		kind = newKind;
		text.append(line.strip());
	}

	private void end() {
		if (!text.isEmpty()) {
			blocks.add(new Block(kind, runs(text.toString())));
			text.setLength(0);
		}
	}

	private static List<Run> runs(String line) {
		List<Run> runs = new ArrayList<>();
		Matcher link = LINK.matcher(line);
		int done = 0;
		while (link.find()) {
			if (link.start() > done) {
				runs.add(new Run(line.substring(done, link.start()), ""));
			}
			runs.add(new Run(link.group(1), link.group(2)));
			done = link.end();
		}
		if (done < line.length()) {
			runs.add(new Run(line.substring(done), ""));
		}
		return runs;
	}
}
