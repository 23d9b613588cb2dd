package org.frisket.ui.views.internal.typecase;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ProgressBar;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPartSite;
import org.frisket.typography.chart.GlyphFilter;
import org.frisket.typography.source.FontEntry;
import org.frisket.ui.views.internal.TextKeys;
import org.frisket.ui.views.internal.fonts.FontField;

/** What stands above the cells of the type case: the font, how far the fonts are known, the search and the filter. */
public final class CaseBar {

	/** What is asked for here. */
	interface Client {

		void open(FontEntry font);

		void search(String words);

		void filter(GlyphFilter filter);

		/** The keys are to go to the cells. */
		void toGrid();

		/** The first glyph that was found is to be put on the bench. */
		void chooseFirst();

		FontShelf shelf();

		/** The font that lies open; null for none. */
		FontEntry font();
	}

	private static final int SPACE_PX = 4;
	private static final int TICKS = 1000;
	private static final List<String> FILTERS = List.of(Messages.CaseBar_all, Messages.CaseBar_characters,
			Messages.CaseBar_lone, Messages.CaseBar_ornaments);

	private final Client client;
	private final Composite bar;
	private final FontField font;
	private final Composite reading;
	private final ProgressBar progress;
	private final Text search;
	private final Combo filter;
	private CasePopup popup;

	CaseBar(Composite parent, Client client) {
		this.client = client;
		bar = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(SPACE_PX, SPACE_PX).spacing(SPACE_PX, SPACE_PX).applyTo(bar);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
		font = new FontField(bar, Messages.CaseBar_font, this::choose);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(font);
		reading = new Composite(bar, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(SPACE_PX, 0).applyTo(reading);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(reading);
		progress = new ProgressBar(reading, SWT.HORIZONTAL | SWT.SMOOTH);
		progress.setMaximum(TICKS);
		progress.setToolTipText(Messages.FontShelf_job);
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(SPACE_PX, SWT.DEFAULT)
				.applyTo(progress);
		Button stop = new Button(reading, SWT.PUSH);
		stop.setText(Messages.CaseBar_stop);
		stop.addListener(SWT.Selection, event -> client.shelf().cancel());
		search = new Text(bar, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
		search.setMessage(Messages.CaseBar_search);
		search.setToolTipText(Messages.CaseBar_searchTip);
		GridDataFactory.fillDefaults().grab(true, false).hint(SPACE_PX, SWT.DEFAULT).applyTo(search);
		search.addListener(SWT.Modify, event -> client.search(search.getText()));
		search.addListener(SWT.KeyDown, this::key);
		search.addListener(SWT.Traverse, this::traverse);
		filter = new Combo(bar, SWT.READ_ONLY | SWT.DROP_DOWN);
		filter.setItems(FILTERS.toArray(String[]::new));
		filter.select(0);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
		filter.addListener(SWT.Selection, event -> client.filter(filter()));
	}

	/** Takes all the room that is left. */
	static void fill(Control control) {
		GridDataFactory.fillDefaults().grab(true, true).applyTo(control);
	}

	/** While a text is typed here, cut and paste mean the text. */
	void keepTextKeys(IWorkbenchPartSite site) {
		TextKeys keys = new TextKeys(site);
		search.addListener(SWT.FocusIn, event -> keys.activate());
		search.addListener(SWT.FocusOut, event -> keys.deactivate());
	}

	private void key(Event event) {
		if (event.keyCode == SWT.ARROW_DOWN) {
			event.doit = false;
			client.toGrid();
		}
	}

	private void traverse(Event event) {
		if (event.detail == SWT.TRAVERSE_RETURN) {
			event.doit = false;
			client.chooseFirst();
		} else if (event.detail == SWT.TRAVERSE_ESCAPE && !search.getText().isEmpty()) {
			event.doit = false;
			search.setText(""); //$NON-NLS-1$
		}
	}

	private void choose() {
		if (popup == null) {
			popup = new CasePopup(font, client::open, () -> popup = null);
			popup.open(client.shelf().index(), client.font(), client.shelf().isReading());
		}
	}

	/** Shows how far the fonts are known. */
	void show(FontShelf shelf) {
		progress.setSelection((int) (TICKS * shelf.progress()));
		GridData place = (GridData) reading.getLayoutData();
		if (place.exclude == shelf.isReading()) {
			place.exclude = !shelf.isReading();
			reading.setVisible(shelf.isReading());
			bar.getParent().layout(true, true);
		}
		if (popup != null) {
			popup.show(shelf.index(), shelf.isReading());
		}
	}

	void showFont(FontEntry open) {
		font.show(open.names().label(), open, false);
	}

	/** A letter that was typed over the cells begins or goes on with the search. */
	void type(char character) {
		search.setFocus();
		search.append(String.valueOf(character));
	}

	String words() {
		return search.getText();
	}

	GlyphFilter filter() {
		return GlyphFilter.values()[Math.max(0, filter.getSelectionIndex())];
	}

	void setFilter(GlyphFilter wanted) {
		filter.select(wanted.ordinal());
	}

	public FontField fontField() {
		return font;
	}

	public Text searchField() {
		return search;
	}

	public Combo filterField() {
		return filter;
	}

	/** The list of fonts while it is open; otherwise null. */
	public CasePopup popup() {
		return popup;
	}
}
