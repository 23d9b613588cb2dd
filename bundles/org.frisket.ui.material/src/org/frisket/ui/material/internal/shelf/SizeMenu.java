package org.frisket.ui.material.internal.shelf;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.frisket.material.sizes.PaperSize;

/** Offers the sizes that have names, and rolls, to be added to those of a stock. */
final class SizeMenu {

	/** Widths that films are usually sold in: common practice, no source. */
	private static final List<String> ROLLS = List.of("roll 305mm", "roll 12in", "roll 610mm", "roll 24in", //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
			"roll 305mm x 5m", "roll 610mm x 25m"); //$NON-NLS-1$ //$NON-NLS-2$

	private final Button button;
	private final Consumer<String> sink;

	SizeMenu(Composite column, Consumer<String> sink) {
		this.sink = sink;
		new Label(column, SWT.NONE);
		button = new Button(column, SWT.PUSH);
		button.setText(Messages.SizeMenu_add);
		button.setToolTipText(Messages.SizeMenu_tip);
		GridDataFactory.swtDefaults().applyTo(button);
		button.addListener(SWT.Selection, event -> open());
	}

	private void open() {
		Menu menu = new Menu(button.getShell(), SWT.POP_UP);
		part(menu, Messages.SizeMenu_iso, name -> name.matches("S?R?[AB]\\d+")); //$NON-NLS-1$
		part(menu, Messages.SizeMenu_us, name -> !name.matches("S?R?[AB]\\d+|(\\d+)x\\1in")); //$NON-NLS-1$
		part(menu, Messages.SizeMenu_squares, name -> name.matches("(\\d+)x\\1in")); //$NON-NLS-1$
		add(menu, Messages.SizeMenu_rolls, ROLLS);
		menu.addListener(SWT.Hide, event -> button.getDisplay().asyncExec(menu::dispose));
		menu.setLocation(button.toDisplay(0, button.getSize().y));
		menu.setVisible(true);
	}

	private void part(Menu menu, String title, Predicate<String> names) {
		add(menu, title, PaperSize.known().stream().map(PaperSize::name).filter(names).toList());
	}

	private void add(Menu menu, String title, List<String> names) {
		MenuItem part = new MenuItem(menu, SWT.CASCADE);
		part.setText(title);
		Menu inside = new Menu(menu);
		part.setMenu(inside);
		for (String name : names) {
			MenuItem item = new MenuItem(inside, SWT.PUSH);
			item.setText(name);
			item.addListener(SWT.Selection, event -> sink.accept(name));
		}
	}
}
