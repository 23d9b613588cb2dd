package org.frisket.ui.bench.internal.imports;

import java.nio.file.Path;
import java.util.function.IntConsumer;

import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;

/** Asks which page of a file takes the place of a picture. */
public final class PageDialog extends InputDialog {

	private final IntConsumer chosen;

	/** @param pages how many there are @param chosen told the page, from 1, if one is chosen */
	public PageDialog(Shell shell, Path file, int pages, IntConsumer chosen) {
		super(shell, Messages.PageDialog_title, NLS.bind(Messages.PageDialog_page, file.getFileName(), pages), "1", //$NON-NLS-1$
				text -> isPage(text, pages) ? null : NLS.bind(Messages.PageDialog_noPage, pages));
		this.chosen = chosen;
		setBlockOnOpen(false);
	}

	private static boolean isPage(String text, int pages) {
		try {
			int page = Integer.parseInt(text.strip());
			return page >= 1 && page <= pages;
		} catch (NumberFormatException e) {
			return false;
		}
	}

	@Override
	protected void okPressed() {
		int page = Integer.parseInt(getValue().strip());
		super.okPressed();
		chosen.accept(page);
	}
}
