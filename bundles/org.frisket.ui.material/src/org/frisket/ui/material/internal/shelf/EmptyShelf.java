package org.frisket.ui.material.internal.shelf;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** What is seen of a shelf on which nothing lies: how to put something there. */
final class EmptyShelf extends Composite {

	private static final int MARGIN_PX = 12;
	private static final int SPACE_PX = 8;

	EmptyShelf(Composite parent, ShelfActions actions) {
		super(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(MARGIN_PX, MARGIN_PX).spacing(SPACE_PX, SPACE_PX).applyTo(this);
		Label words = new Label(this, SWT.WRAP);
		words.setText(Messages.EmptyShelf_words);
		GridDataFactory.fillDefaults().grab(true, false).hint(160, SWT.DEFAULT).applyTo(words);
		button(Messages.EmptyShelf_catalogue, actions::takeFromCatalogue);
		button(Messages.EmptyShelf_new, actions::create);
		button(Messages.EmptyShelf_pack, actions::studyPack);
		button(Messages.EmptyShelf_import, actions::importTable);
	}

	private void button(String text, Runnable action) {
		Button button = new Button(this, SWT.PUSH);
		button.setText(text);
		button.addListener(SWT.Selection, event -> action.run());
	}
}
