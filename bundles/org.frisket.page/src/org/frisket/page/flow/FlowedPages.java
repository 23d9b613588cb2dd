package org.frisket.page.flow;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.page.PagePainter;
import org.frisket.page.PdfPages;
import org.frisket.page.Words;
import org.frisket.prepare.layout.PageSetup;

/**
 * A column on pages, each with the title and its number at its head.
 *
 * @param setup paper of the pages
 * @param title at the head of each, and of the document
 */
public record FlowedPages(PageSetup setup, String title) {

	/** Around everything, in mm. */
	public static final double MARGIN = 12;
	private static final double HEAD = 9;

	/** One that is as wide as the pages have room. */
	public Column column() {
		return new Column(MARGIN, setup.width() - 2 * MARGIN);
	}

	/** How much room a column has on each page, in mm. */
	public double room() {
		return setup.height() - 2 * MARGIN - HEAD;
	}

	/** As PDF. @param identity what tells this document from others, besides what it says */
	public void write(Column column, String identity, OutputStream out) throws IOException {
		List<List<Block>> pages = column.pages(room());
		try (PdfPages pdf = new PdfPages(title, identity + " " + column.texts(), Optional.empty())) {
			for (int i = 0; i < pages.size(); i++) {
				int number = i;
				pdf.add(setup.width(), setup.height(), painter -> page(painter, pages.get(number), number + 1, pages.size()));
			}
			pdf.write(out);
		}
	}

	private void page(PagePainter painter, List<Block> blocks, int number, int count) throws IOException {
		String pageOf = NLS.bind(Messages.FlowedPages_page, number, count);
		double width = setup.width() - 2 * MARGIN;
		double room = Words.width(pageOf, Column.TEXT);
		painter.words(title, MARGIN, MARGIN + Column.TITLE, Column.TITLE, width - room - 5, Column.BLACK);
		painter.words(pageOf, MARGIN + width - room, MARGIN + Column.TITLE, Column.TEXT, room + 0.1, Column.DARK);
		double top = MARGIN + HEAD;
		for (Block block : blocks) {
			block.content().paint(painter, top);
			top += block.height();
		}
	}
}
