package org.frisket.ui.print.internal.marks;

import java.util.List;
import java.util.Objects;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.frisket.print.measure.MeasuredSheet;
import org.frisket.ui.views.internal.TextKeys;

/** The picture of a sheet with its marks, and beside it or below what is measured and what that says. */
public final class MarksPage extends Composite {

	/** What is asked for here, beside what its parts ask for. */
	interface Client extends PlacesGrid.Client, LengthsGrid.Client, FitPanel.Client {

		/** The back of the sheet, or its front again. */
		void side(boolean back);

		/** Another sheet. @param index among those that were offered */
		void sheet(int index);

		void placeMarks();

		void loadScan();

		void stopScan();

		void showScan(boolean shown);

		/** Whether lengths are typed instead of places. */
		void measureLengths(boolean lengths);

		/** A mark was clicked, from 0. */
		void markChosen(int mark);
	}

	private static final int SPACE_PX = 4;
	private static final int[] BESIDE = { 55, 45 };
	private static final int[] BELOW = { 50, 50 };

	private final Combo sheets;
	private final Combo side;
	private final Composite scanning;
	private final Label scanningWords;
	private final SashForm halves;
	private final MarksCanvas canvas;
	private final Button scanShown;
	private final ScrolledComposite scroll;
	private final Composite told;
	private final Label said;
	private final Notices notices;
	private final Composite measures;
	private final Button byPlaces;
	private final Button byLengths;
	private final PlacesGrid places;
	private final LengthsGrid lengths;
	/** What the measures that are typed are of. */
	private String sheetShown;
	private boolean backShown;
	private final FitPanel fit;

	MarksPage(Composite parent, TextKeys keys, Client client) {
		super(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(SPACE_PX, SPACE_PX).spacing(SPACE_PX, SPACE_PX).applyTo(this);
		Composite bar = new Composite(this, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(4).applyTo(bar);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
		sheets = new Combo(bar, SWT.READ_ONLY);
		GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(100, SWT.DEFAULT).applyTo(sheets);
		sheets.addListener(SWT.Selection, event -> client.sheet(sheets.getSelectionIndex()));
		side = new Combo(bar, SWT.READ_ONLY);
		side.setItems(Messages.MarksPage_front, Messages.MarksPage_back);
		GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).exclude(true).applyTo(side);
		side.setVisible(false);
		side.addListener(SWT.Selection, event -> client.side(side.getSelectionIndex() == 1));
		button(bar, Messages.MarksPage_place, client::placeMarks);
		button(bar, Messages.MarksPage_scan, client::loadScan);
		scanning = new Composite(this, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).applyTo(scanning);
		GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(scanning);
		scanning.setVisible(false);
		scanningWords = label(scanning);
		button(scanning, Messages.MarksPage_stop, client::stopScan);
		halves = new SashForm(this, SWT.HORIZONTAL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(halves);
		Composite picture = new Composite(halves, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(SPACE_PX, SPACE_PX).applyTo(picture);
		canvas = new MarksCanvas(picture, client::markChosen, this::words);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
		scanShown = new Button(picture, SWT.CHECK);
		scanShown.setText(Messages.MarksPage_scanShown);
		scanShown.addListener(SWT.Selection, event -> client.showScan(scanShown.getSelection()));
		GridDataFactory.fillDefaults().exclude(true).applyTo(scanShown);
		scanShown.setVisible(false);
		scroll = new ScrolledComposite(halves, SWT.V_SCROLL);
		scroll.setExpandHorizontal(true);
		scroll.setExpandVertical(true);
		scroll.setShowFocusedControl(true);
		told = new Composite(scroll, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(2 * SPACE_PX, 2 * SPACE_PX).spacing(2 * SPACE_PX, 2 * SPACE_PX).applyTo(told);
		said = label(told);
		notices = new Notices(told);
		GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(notices);
		measures = new Composite(told, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(SPACE_PX, 2 * SPACE_PX).applyTo(measures);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(measures);
		Composite ways = new Composite(measures, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).applyTo(ways);
		byPlaces = way(ways, Messages.MarksPage_places, () -> client.measureLengths(false));
		byLengths = way(ways, Messages.MarksPage_lengths, () -> client.measureLengths(true));
		byPlaces.setSelection(true);
		places = new PlacesGrid(measures, keys, client);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(places);
		lengths = new LengthsGrid(measures, keys, client);
		GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(lengths);
		lengths.setVisible(false);
		fit = new FitPanel(measures, client);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(fit);
		scroll.setContent(told);
		scroll.addListener(SWT.Resize, event -> fitSide());
		told.addListener(SWT.Resize, event -> fitSide());
		halves.setWeights(BESIDE);
		addListener(SWT.Resize, event -> turn());
	}

	private static Label label(Composite parent) {
		Label label = new Label(parent, SWT.WRAP);
		GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(SPACE_PX, SWT.DEFAULT).applyTo(label);
		return label;
	}

	private static void button(Composite parent, String text, Runnable action) {
		Button button = new Button(parent, SWT.PUSH);
		button.setText(text);
		button.addListener(SWT.Selection, event -> action.run());
	}

	private static Button way(Composite parent, String text, Runnable action) {
		Button way = new Button(parent, SWT.RADIO);
		way.setText(text);
		way.addListener(SWT.Selection, event -> {
			if (way.getSelection()) {
				action.run();
			}
		});
		return way;
	}

	/** The side stands where there is more room. */
	private void turn() {
		int orientation = getSize().x > getSize().y ? SWT.HORIZONTAL : SWT.VERTICAL;
		if (halves.getOrientation() != orientation) {
			halves.setOrientation(orientation);
			halves.setWeights(orientation == SWT.HORIZONTAL ? BESIDE : BELOW);
		}
	}

	private void fitSide() {
		scroll.setMinHeight(told.computeSize(scroll.getClientArea().width, SWT.DEFAULT).y);
	}

	private static void show(Control control, boolean shown) {
		GridData data = (GridData) control.getLayoutData();
		if (data.exclude == shown) {
			data.exclude = !shown;
			control.setVisible(shown);
			control.requestLayout();
		}
	}

	/** @param index of the one that is shown */
	void showSheets(List<String> names, int index) {
		if (!List.of(sheets.getItems()).equals(names)) {
			sheets.setItems(names.toArray(String[]::new));
		}
		sheets.select(index);
	}

	/** @param twoSided whether there is a back to choose @param back whether it is shown */
	void showSide(boolean twoSided, boolean back) {
		side.select(back ? 1 : 0);
		show(side, twoSided);
	}

	/** @param all that is to be known @param words said above */
	void show(SheetState state, String name, List<Notices.Notice> all, String words) {
		canvas.show(MarksPicture.of(state, name));
		MeasuredSheet measured = state.measured().orElse(null);
		if (!Objects.equals(state.sheet().getId(), sheetShown) || state.back() != backShown) {
			places.forget();
			lengths.forget();
			sheetShown = state.sheet().getId();
			backShown = state.back();
		}
		say(words);
		notices.show(all);
		show(measures, measured != null);
		places.show(measured);
		lengths.show(measured == null ? null : measured.plan());
		if (measured != null) {
			fit.show(measured, state.parts(), state.sheet().getPrinter());
		}
		told.layout(true, true);
		fitSide();
	}

	private void say(String words) {
		String text = words.replace("&", "&&"); //$NON-NLS-1$ //$NON-NLS-2$
		if (!text.equals(said.getText())) {
			said.setText(text);
		}
		show(said, !words.isEmpty());
	}

	void measureLengths(boolean now) {
		byPlaces.setSelection(!now);
		byLengths.setSelection(now);
		show(places, !now);
		show(lengths, now);
		told.layout(true, true);
		fitSide();
	}

	boolean measuresLengths() {
		return byLengths.getSelection();
	}

	/** @param percent below 0 if no scan is looked through */
	void showScanning(int percent) {
		if (percent >= 0) {
			scanningWords.setText(NLS.bind(Messages.MarksPage_scanning, percent));
		}
		show(scanning, percent >= 0);
	}

	/** Offers the scan that was loaded last. */
	void offerScan(boolean there, boolean shown) {
		scanShown.setSelection(shown);
		show(scanShown, there);
		canvas.setScanShown(there && shown);
	}

	/** What is seen, for who cannot see it. */
	private String words() {
		return canvas.shown() == null ? "" : MarksPainter.legend(canvas.shown()); //$NON-NLS-1$
	}

	@Override
	public boolean setFocus() {
		return canvas.setFocus();
	}

	public MarksCanvas canvas() {
		return canvas;
	}

	/** The choice of the side, seen where there is one. */
	public Combo side() {
		return side;
	}

	public PlacesGrid places() {
		return places;
	}

	public LengthsGrid lengths() {
		return lengths;
	}

	public FitPanel fit() {
		return fit;
	}

	public Notices notices() {
		return notices;
	}

	/** What is said of the sheet. */
	public String said() {
		return said.getText();
	}
}
