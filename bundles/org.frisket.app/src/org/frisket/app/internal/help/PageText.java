package org.frisket.app.internal.help;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.Bullet;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.GlyphMetrics;
import org.frisket.help.HelpPage;
import org.frisket.help.HelpPage.Block;
import org.frisket.help.HelpPage.Kind;
import org.frisket.help.HelpPage.Run;

/** Writes a page into a text: title, headings, items with a dash, links. Knows where each block begins. */
final class PageText {

	private static final int ITEM_INDENT_PX = 16;

	private final StringBuilder text = new StringBuilder();
	private final List<StyleRange> styles = new ArrayList<>();
	private final List<Integer> starts = new ArrayList<>();
	private final List<Integer> items = new ArrayList<>();

	PageText(HelpPage page) {
		bold(page.title());
		text.append("\n\n"); //$NON-NLS-1$
		for (Block block : page.blocks()) {
			add(block);
		}
	}

	private void add(Block block) {
		if (block.kind() == Kind.HEADING) {
			text.append('\n');
		}
		starts.add(text.length());
		if (block.kind() == Kind.HEADING) {
			bold(block.text());
		} else {
			if (block.kind() == Kind.ITEM) {
				items.add(text.length());
			}
			block.runs().forEach(this::add);
		}
		text.append('\n');
		if (block.kind() == Kind.PARAGRAPH) {
			text.append('\n');
		}
	}

	private void add(Run run) {
		if (run.isLink()) {
			StyleRange link = new StyleRange();
			link.start = text.length();
			link.length = run.text().length();
			link.underline = true;
			link.underlineStyle = SWT.UNDERLINE_LINK;
			link.data = run.link();
			styles.add(link);
		}
		text.append(run.text());
	}

	private void bold(String words) {
		StyleRange bold = new StyleRange();
		bold.start = text.length();
		bold.length = words.length();
		bold.fontStyle = SWT.BOLD;
		styles.add(bold);
		text.append(words);
	}

	/** Shows the page from its top, or from the block asked for. */
	void showIn(StyledText control, int block) {
		control.setText(text.toString());
		control.setStyleRanges(styles.toArray(StyleRange[]::new));
		for (int start : items) {
			StyleRange style = new StyleRange();
			style.metrics = new GlyphMetrics(0, 0, ITEM_INDENT_PX);
			control.setLineBullet(control.getLineAtOffset(start), 1, new Bullet(style));
		}
		int place = block < 0 || block >= starts.size() ? 0 : starts.get(block);
		control.setCaretOffset(place);
		if (place == 0) {
			control.setTopPixel(0);
		} else {
			control.setTopIndex(control.getLineAtOffset(place));
		}
	}
}
