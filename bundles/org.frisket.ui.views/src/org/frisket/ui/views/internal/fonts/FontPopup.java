package org.frisket.ui.views.internal.fonts;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/**
 * The list of families under a field, with a filter above it. The arrow keys go from one to the next, which is tried at
 * once; Enter or a double click keeps it, Escape or a click elsewhere gives up.
 */
public final class FontPopup {

	/** What is to be done with a family. */
	public interface Client {

		/** It is looked at. */
		void tried(FontFamily family);

		/** It is the one. */
		void kept(FontFamily family);

		/** None is; what was tried is to be taken back. */
		void givenUp();
	}

	private static final int WIDTH_PX = 460;
	private static final int HEIGHT_PX = 380;
	private static final int SPACE_PX = 4;

	private final Client client;
	private final List<FontFamily> families;
	private final String words;
	private final Shell shell;
	private final Text filter;
	private final FontList list;
	private boolean done;

	/**
	 * @param field   under which it opens
	 * @param current the family that is set now; null for none
	 * @param words   what each family is shown with
	 */
	public FontPopup(Control field, List<FontFamily> families, FontFamily current, String words, Client client) {
		this.client = client;
		this.families = families;
		this.words = words;
		shell = new Shell(field.getShell(), SWT.TOOL | SWT.NO_TRIM);
		GridLayoutFactory.fillDefaults().margins(SPACE_PX, SPACE_PX).spacing(SPACE_PX, SPACE_PX).applyTo(shell);
		filter = new Text(shell, SWT.SEARCH | SWT.ICON_SEARCH);
		filter.setMessage(Messages.FontPopup_filter);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
		list = new FontList(shell, client::tried, this::keep);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(list);
		filter.addListener(SWT.Modify, event -> filter());
		filter.addListener(SWT.KeyDown, this::key);
		filter.addListener(SWT.Traverse, this::traverse);
		shell.addListener(SWT.Deactivate, event -> giveUp());
		shell.setBounds(place(field));
		list.show(families, words);
		list.select(current);
		shell.open();
		filter.setFocus();
	}

	private static Rectangle place(Control field) {
		Point corner = field.toDisplay(0, field.getSize().y);
		Rectangle screen = field.getMonitor().getClientArea();
		int width = Math.min(WIDTH_PX, screen.width);
		int height = Math.min(HEIGHT_PX, screen.height);
		// under the field, and rather over the window than over its edge
		Rectangle window = field.getShell().getBounds();
		int right = Math.min(window.x + window.width, screen.x + screen.width);
		int x = Math.max(screen.x, Math.min(corner.x, right - width));
		int y = corner.y + height <= screen.y + screen.height ? corner.y
				: Math.max(screen.y, corner.y - field.getSize().y - height);
		return new Rectangle(x, y, width, height);
	}

	private void filter() {
		list.show(families.stream().filter(family -> family.matches(filter.getText())).toList(), words);
		if (list.selection() == null && !list.families().isEmpty()) {
			list.select(list.families().get(0));
		}
	}

	private void key(Event event) {
		int rows = switch (event.keyCode) {
		case SWT.ARROW_DOWN -> 1;
		case SWT.ARROW_UP -> -1;
		case SWT.PAGE_DOWN -> list.page();
		case SWT.PAGE_UP -> -list.page();
		default -> 0;
		};
		if (rows != 0) {
			event.doit = false;
			list.go(rows);
		}
	}

	private void traverse(Event event) {
		if (event.detail == SWT.TRAVERSE_RETURN) {
			event.doit = false;
			keep();
		} else if (event.detail == SWT.TRAVERSE_ESCAPE) {
			event.doit = false;
			giveUp();
		} else if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
			event.doit = false;
		}
	}

	private void keep() {
		FontFamily family = list.selection();
		close(family == null ? null : client::kept, family);
	}

	private void giveUp() {
		close(null, null);
	}

	private void close(Consumer<FontFamily> end, FontFamily family) {
		if (!done) {
			done = true;
			shell.dispose();
			if (end == null) {
				client.givenUp();
			} else {
				end.accept(family);
			}
		}
	}

	/** The window, while it is open. */
	public Shell shell() {
		return shell;
	}

	public FontList list() {
		return list;
	}

	public Text filterField() {
		return filter;
	}
}
