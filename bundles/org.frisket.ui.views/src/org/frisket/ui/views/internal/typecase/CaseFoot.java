package org.frisket.ui.views.internal.typecase;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Scale;
import org.frisket.typography.chart.GlyphEntry;

/** What stands below the cells of the type case: the glyph that is looked at, and how large all are shown. */
public final class CaseFoot {

	private static final int SPACE_PX = 4;
	private static final int SCALE_PX = 80;
	private static final int SCALE_STEP = 8;

	private final GlyphGrid grid;
	private final CLabel words;
	private final Scale size;

	CaseFoot(Composite parent, GlyphGrid grid) {
		this.grid = grid;
		Composite foot = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(SPACE_PX, 0).applyTo(foot);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(foot);
		words = new CLabel(foot, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(words);
		size = new Scale(foot, SWT.HORIZONTAL);
		size.setMinimum(GlyphGrid.LEAST_CELL);
		size.setMaximum(GlyphGrid.MOST_CELL);
		size.setIncrement(SCALE_STEP);
		size.setPageIncrement(2 * SCALE_STEP);
		size.setToolTipText(Messages.CaseFoot_size);
		GridDataFactory.fillDefaults().hint(SCALE_PX, SWT.DEFAULT).applyTo(size);
		size.addListener(SWT.Selection, event -> grid.setCell(size.getSelection()));
	}

	void showCell() {
		size.setSelection(grid.cell());
	}

	/** @param entry that is looked at; null for none, then it says how many there are */
	void show(GlyphEntry entry) {
		say(entry != null ? GlyphWords.of(entry)
				: switch (grid.entries().size()) {
				case 0 -> ""; //$NON-NLS-1$
				case 1 -> Messages.CaseFoot_one;
				default -> NLS.bind(Messages.CaseFoot_count, grid.entries().size());
				});
	}

	/** Says what has happened, until another glyph is looked at. */
	void say(String message) {
		if (!words.isDisposed()) {
			// an ampersand is a letter here
			words.setText(message.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
			words.setToolTipText(message);
		}
	}

	/** What is said. */
	public String text() {
		return words.getToolTipText();
	}

	public Scale sizeField() {
		return size;
	}
}
