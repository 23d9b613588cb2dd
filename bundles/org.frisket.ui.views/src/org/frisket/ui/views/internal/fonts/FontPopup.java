package org.frisket.ui.views.internal.fonts;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.geometry.Monitor;
import org.frisket.prepare.fonts.FontVerdict;
import org.frisket.typography.source.FontEntry;

/**
 * The list of families under a field, with a filter above it. The arrow keys go from one to the next, which is tried at
 * once; Enter or a double click keeps it, Escape or a click elsewhere gives up. Each row says whether its font could be
 * cut; Tab leads to what the list goes by.
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

	private static final int WIDTH_PX = 720;
	private static final int HEIGHT_PX = 460;
	private static final int SPACE_PX = 4;
	private static final int FOOT_LINES = 3;

	private final Client client;
	private final List<FontFamily> families;
	private final String words;
	private final Shell shell;
	private final Text filter;
	private final FontList list;
	private final FontVerdicts verdicts;
	private final List<Button> orders = new ArrayList<>();
	private final Label foot;
	private FontVerdicts.Order order = FontVerdicts.Order.NAME;
	/** Whether the list waits until all is known that it is to go by. */
	private boolean waiting;
	private boolean done;

	/**
	 * @param field   under which it opens
	 * @param current the family that is set now; null for none
	 * @param words   what each family is shown with
	 * @param trial   what is to be said of a font; asked in the background
	 */
	public FontPopup(Control field, List<FontFamily> families, FontFamily current, String words,
			BiFunction<FontEntry, Monitor, FontVerdict> trial, Client client) {
		this.client = client;
		this.families = families;
		this.words = words;
		shell = new Shell(field.getShell(), SWT.TOOL | SWT.NO_TRIM);
		GridLayoutFactory.fillDefaults().margins(SPACE_PX, SPACE_PX).spacing(SPACE_PX, SPACE_PX).applyTo(shell);
		filter = new Text(shell, SWT.SEARCH | SWT.ICON_SEARCH);
		filter.setMessage(Messages.FontPopup_filter);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
		addOrders();
		verdicts = new FontVerdicts(trial, shell.getDisplay(), this::known);
		list = new FontList(shell, this::gone, this::keep, verdicts);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(list);
		foot = new Label(shell, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false)
				.hint(WIDTH_PX - 2 * SPACE_PX, FOOT_LINES * filter.getLineHeight()).applyTo(foot);
		filter.addListener(SWT.Modify, event -> filter());
		filter.addListener(SWT.KeyDown, this::key);
		filter.addListener(SWT.Traverse, this::traverse);
		shell.addListener(SWT.Dispose, event -> {
			verdicts.close();
			if (!done) {
				done = true;
				client.givenUp();
			}
		});
		shell.addListener(SWT.Deactivate, event -> giveUp());
		shell.setBounds(place(field));
		list.show(families, words);
		list.select(current);
		tell();
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

	private void addOrders() {
		Composite row = new Composite(shell, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(FontVerdicts.Order.values().length + 1).applyTo(row);
		new Label(row, SWT.NONE).setText(Messages.FontPopup_order);
		for (FontVerdicts.Order each : FontVerdicts.Order.values()) {
			Button button = new Button(row, SWT.RADIO);
			button.setText(switch (each) {
			case NAME -> Messages.FontPopup_byName;
			case FITNESS -> Messages.FontPopup_byFitness;
			case X_HEIGHT -> Messages.FontPopup_byXHeight;
			});
			button.setSelection(each == order);
			button.addListener(SWT.Selection, event -> {
				if (button.getSelection()) {
					order(each);
				}
			});
			button.addListener(SWT.Traverse, this::traverse);
			orders.add(button);
		}
	}

	private void order(FontVerdicts.Order wanted) {
		if (order != wanted) {
			order = wanted;
			filter();
		}
	}

	/** The next order, or the one before it, which has the focus then. */
	private void order(int by) {
		int count = orders.size();
		int next = (order.ordinal() + by + count) % count;
		for (Button button : orders) {
			button.setSelection(button == orders.get(next));
		}
		orders.get(next).setFocus();
		order(FontVerdicts.Order.values()[next]);
	}

	private List<FontFamily> matching() {
		return families.stream().filter(family -> family.matches(filter.getText())).toList();
	}

	private void filter() {
		List<FontFamily> matching = matching();
		verdicts.expect(matching, order);
		waiting = order != FontVerdicts.Order.NAME && verdicts.missing(matching) > 0;
		list.show(verdicts.ordered(matching, order), words);
		if (list.selection() == null && !list.families().isEmpty()) {
			list.select(list.families().get(0));
		}
		tell();
	}

	private void known() {
		if (waiting && verdicts.missing(list.families()) == 0) {
			filter();
		}
		list.redraw();
		tell();
	}

	private void gone(FontFamily family) {
		tell();
		client.tried(family);
	}

	/** The small print of the selected font, or how far the list is with what it is to go by. */
	private void tell() {
		FontFamily family = list.selection();
		FontVerdict verdict = family == null ? null : verdicts.known(family);
		String words = waiting
				? NLS.bind(Messages.FontPopup_waiting, verdicts.missing(list.families()), list.families().size())
				: verdict == null ? "" : verdict.small(); //$NON-NLS-1$
		if (!words.equals(foot.getText())) {
			foot.setText(words.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
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
		} else if (event.detail == SWT.TRAVERSE_ARROW_NEXT || event.detail == SWT.TRAVERSE_ARROW_PREVIOUS) {
			if (event.widget != filter) {
				event.doit = false;
				order(event.detail == SWT.TRAVERSE_ARROW_NEXT ? 1 : -1);
			}
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

	/** What stands below the list. */
	public String foot() {
		return foot.getText();
	}

	/** What is said of a family; null while that is not known. */
	public FontVerdict verdict(FontFamily family) {
		return verdicts.known(family);
	}
}
