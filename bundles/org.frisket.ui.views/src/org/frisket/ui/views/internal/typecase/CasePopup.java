package org.frisket.ui.views.internal.typecase;

import java.lang.Character.UnicodeScript;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.typography.index.FontIndex;
import org.frisket.typography.index.FontQuery;
import org.frisket.typography.index.IndexedFont;
import org.frisket.typography.source.FontEntry;
import org.frisket.ui.views.internal.fonts.FontFamily;
import org.frisket.ui.views.internal.fonts.FontList;

/**
 * The list of fonts under a field: searched by name, script and characters while one types, each font set in itself.
 * Enter or a double click takes one, Escape or a click elsewhere leaves things as they were. Below stands what cannot be
 * read and why.
 */
public final class CasePopup {

	private static final int WIDTH_PX = 460;
	private static final int HEIGHT_PX = 420;
	private static final int SPACE_PX = 4;
	private static final int BROKEN_LINES = 3;

	private final Consumer<FontEntry> taken;
	private final Runnable closed;
	private final Shell shell;
	private final Text name;
	private final Combo script;
	private final Text characters;
	private final FontList list;
	private final Label count;
	private final Text broken;
	private FontIndex index = new FontIndex(List.of(), List.of());
	private List<UnicodeScript> scripts = List.of();
	/** The rows by their fonts: the same row for a font, whatever is searched. */
	private final Map<FontEntry, FontFamily> rows = new IdentityHashMap<>();
	private boolean done;

	/**
	 * @param field under which it opens
	 * @param taken told which font was taken
	 */
	public CasePopup(Control field, Consumer<FontEntry> taken, Runnable closed) {
		this.taken = taken;
		this.closed = closed;
		shell = new Shell(field.getShell(), SWT.TOOL | SWT.NO_TRIM);
		GridLayoutFactory.fillDefaults().margins(SPACE_PX, SPACE_PX).spacing(SPACE_PX, SPACE_PX).applyTo(shell);
		name = text(shell, Messages.CasePopup_name);
		Composite row = new Composite(shell, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(SPACE_PX, SPACE_PX).applyTo(row);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
		script = new Combo(row, SWT.READ_ONLY | SWT.DROP_DOWN);
		script.setItems(Messages.CasePopup_anyScript);
		script.select(0);
		characters = text(row, Messages.CasePopup_characters);
		list = new FontList(shell, font -> {
			// looked at in the list; the glyphs come once it is taken
		}, this::take);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(list);
		count = new Label(shell, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(count);
		broken = new Text(shell, SWT.MULTI | SWT.READ_ONLY | SWT.V_SCROLL | SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false)
				.hint(WIDTH_PX - 2 * SPACE_PX, BROKEN_LINES * broken.getLineHeight()).exclude(true).applyTo(broken);
		listen();
		shell.setBounds(place(field));
	}

	private static Text text(Composite parent, String message) {
		Text text = new Text(parent, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
		text.setMessage(message);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
		return text;
	}

	private void listen() {
		for (Text text : List.of(name, characters)) {
			text.addListener(SWT.Modify, event -> search());
			text.addListener(SWT.KeyDown, this::key);
			text.addListener(SWT.Traverse, this::traverse);
		}
		script.addListener(SWT.Selection, event -> search());
		script.addListener(SWT.Traverse, this::traverse);
		shell.addListener(SWT.Deactivate, event -> close());
	}

	private static Rectangle place(Control field) {
		Point corner = field.toDisplay(0, field.getSize().y);
		Rectangle screen = field.getMonitor().getClientArea();
		int width = Math.min(WIDTH_PX, screen.width);
		int height = Math.min(HEIGHT_PX, screen.height);
		int x = Math.max(screen.x, Math.min(corner.x, screen.x + screen.width - width));
		int y = corner.y + height <= screen.y + screen.height ? corner.y
				: Math.max(screen.y, corner.y - field.getSize().y - height);
		return new Rectangle(x, y, width, height);
	}

	/** @param current the font that lies open; null for none */
	public void open(FontIndex fonts, FontEntry current, boolean reading) {
		show(fonts, reading);
		list.select(rows.get(current));
		shell.open();
		name.setFocus();
	}

	/** Shows what is known of the fonts now. */
	void show(FontIndex fonts, boolean reading) {
		index = fonts;
		List<UnicodeScript> known = fonts.fonts().stream().flatMap(font -> font.face().scripts().stream()).distinct()
				.sorted(Comparator.comparing(ScriptName::of)).toList();
		if (!known.equals(scripts)) {
			UnicodeScript before = script();
			scripts = known;
			List<String> items = new ArrayList<>(List.of(Messages.CasePopup_anyScript));
			known.forEach(each -> items.add(ScriptName.of(each)));
			script.setItems(items.toArray(String[]::new));
			script.select(scripts.indexOf(before) + 1);
		}
		broken.setText(fonts.broken().isEmpty() ? "" //$NON-NLS-1$
				: String.join("\n", fonts.broken().stream() //$NON-NLS-1$
						.map(each -> NLS.bind(Messages.CasePopup_broken, each.font(), each.reason())).toList()));
		broken.setVisible(!fonts.broken().isEmpty());
		GridDataFactory.createFrom((GridData) broken.getLayoutData())
				.exclude(fonts.broken().isEmpty()).applyTo(broken);
		search();
		if (reading) {
			count.setText(NLS.bind(Messages.CasePopup_reading, count.getText()));
		}
		shell.layout(true, true);
	}

	private UnicodeScript script() {
		int at = script.getSelectionIndex();
		return at <= 0 ? null : scripts.get(at - 1);
	}

	private void search() {
		FontQuery query = FontQuery.named(name.getText()).withCharacters(characters.getText());
		UnicodeScript wanted = script();
		List<IndexedFont> found = index.search(wanted == null ? query : query.withScript(wanted));
		list.show(found.stream().map(IndexedFont::entry).map(this::row).toList(), sample());
		if (list.selection() == null && !list.families().isEmpty()) {
			list.select(list.families().get(0));
		}
		int unreadable = index.broken().size();
		count.setText(unreadable == 0 ? NLS.bind(Messages.CasePopup_count, found.size(), index.fonts().size())
				: NLS.bind(Messages.CasePopup_countBroken,
						new Object[] { found.size(), index.fonts().size(), unreadable }));
	}

	private FontFamily row(FontEntry font) {
		return rows.computeIfAbsent(font, key -> new FontFamily(key.names().label(), List.of(key)));
	}

	/** The characters that are asked for, so that they are seen. */
	private String sample() {
		return characters.getText().isBlank() ? Messages.CasePopup_sample : characters.getText().strip();
	}

	private void key(Event event) {
		int by = switch (event.keyCode) {
		case SWT.ARROW_DOWN -> 1;
		case SWT.ARROW_UP -> -1;
		case SWT.PAGE_DOWN -> list.page();
		case SWT.PAGE_UP -> -list.page();
		default -> 0;
		};
		if (by != 0) {
			event.doit = false;
			list.go(by);
		}
	}

	private void traverse(Event event) {
		if (event.detail == SWT.TRAVERSE_RETURN) {
			event.doit = false;
			take();
		} else if (event.detail == SWT.TRAVERSE_ESCAPE) {
			event.doit = false;
			close();
		}
	}

	private void take() {
		FontFamily row = list.selection();
		close();
		if (row != null) {
			taken.accept(Objects.requireNonNull(row.plain()));
		}
	}

	void close() {
		if (!done) {
			done = true;
			shell.dispose();
			closed.run();
		}
	}

	/** The window, while it is open. */
	public Shell shell() {
		return shell;
	}

	public FontList list() {
		return list;
	}

	public Text nameField() {
		return name;
	}

	public Text charactersField() {
		return characters;
	}

	public Combo scriptField() {
		return script;
	}

	/** How many were found, in words. */
	public String counted() {
		return count.getText();
	}

	/** What cannot be read and why, a line for each. */
	public String broken() {
		return broken.getText();
	}
}
