package org.frisket.ui.views.internal.typecase;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.part.ViewPart;
import org.frisket.model.FontRef;
import org.frisket.model.Wording;
import org.frisket.page.chart.ChartFiles;
import org.frisket.page.chart.ChartPages;
import org.frisket.page.chart.ChartSheet;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.layout.Paper;
import org.frisket.typography.chart.GlyphChart;
import org.frisket.typography.chart.GlyphEntry;
import org.frisket.typography.chart.GlyphFilter;
import org.frisket.typography.index.FontIndexer;
import org.frisket.typography.index.IndexedFont;
import org.frisket.typography.source.FontEntry;
import org.frisket.ui.LengthUnit;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.views.internal.FrontBench;
import org.osgi.framework.FrameworkUtil;

/**
 * The fonts at hand and every glyph of the one that lies open. It follows the selected wording to its font; what is
 * chosen here goes to the bench.
 */
public final class TypeCaseView extends ViewPart implements JobOnBench.Listener, OpenCase.Client, CaseBar.Client {

	private static final String CONTEXT_ID = "org.frisket.ui.views.typeCase.context"; //$NON-NLS-1$
	private static final String CELL = "cell"; //$NON-NLS-1$
	private static final String FILTER = "filter"; //$NON-NLS-1$
	/** What a new wording is set in. */
	private static final String FIRST_FAMILY = "Liberation Serif"; //$NON-NLS-1$

	private IMemento memento;
	private FontShelf shelf;
	private OpenCase openCase;
	private CaseBar bar;
	private GlyphGrid grid;
	private CaseFoot foot;
	private FrontBench front;
	private Placer placer;
	/** The font that a wording asks for and that is not found yet. */
	private FontRef awaited;

	@Override
	public void init(IViewSite site, IMemento state) throws PartInitException {
		super.init(site, state);
		memento = state;
	}

	@Override
	public void createPartControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(page);
		openCase = new OpenCase(parent.getDisplay(), this);
		bar = new CaseBar(page, this);
		grid = new GlyphGrid(page, new GridClient());
		CaseBar.fill(grid);
		foot = new CaseFoot(page, grid);
		placer = new Placer(parent.getDisplay(), this::bench, foot::say);
		new GlyphDrag(grid, placer);
		restore();
		front = new FrontBench(getSite().getPage(), getSite().getPage()::getActiveEditor, this, this::followSelection);
		shelf = new FontShelf(parent.getDisplay(), FontLibraries.installed().sources(),
				FontIndexer.rememberingIn(Platform
						.getStateLocation(FrameworkUtil.getBundle(TypeCaseView.class)).append("fonts").toPath()), //$NON-NLS-1$
				this::shelfChanged);
		grid.show(null, List.of(), Messages.TypeCaseView_reading);
		getSite().getService(IContextService.class).activateContext(CONTEXT_ID);
		bar.keepTextKeys(getSite());
		shelf.read();
		followSelection();
	}

	private void restore() {
		Integer cell = memento == null ? null : memento.getInteger(CELL);
		grid.setCell(cell == null ? GlyphGrid.USUAL_CELL : cell);
		foot.showCell();
		String filter = memento == null ? null : memento.getString(FILTER);
		if (filter != null) {
			for (GlyphFilter each : GlyphFilter.values()) {
				if (each.name().equals(filter)) {
					bar.setFilter(each);
					openCase.filter(each);
				}
			}
		}
	}

	@Override
	public void saveState(IMemento state) {
		state.putInteger(CELL, grid.cell());
		state.putString(FILTER, bar.filter().name());
	}

	private JobOnBench bench() {
		return front == null ? null : front.bench();
	}

	@Override
	public void selectionChanged() {
		followSelection();
	}

	@Override
	public void jobChanged() {
		followSelection();
	}

	/** Opens the font of the wording that is typed or selected. */
	private void followSelection() {
		JobOnBench bench = bench();
		if (bench != null) {
			bench.typed().or(() -> bench.selection().stream().filter(Wording.class::isInstance)
					.map(Wording.class::cast).findFirst()).map(Wording::getFont).ifPresent(font -> {
						awaited = font;
						openAwaited();
					});
		}
	}

	private void openAwaited() {
		if (awaited != null && shelf != null) {
			Optional<FontEntry> found = shelf.index().fonts().stream().map(IndexedFont::entry)
					.filter(font -> font.family().equalsIgnoreCase(awaited.getName())
							&& (awaited.getStyle() == null ? font.names().isPlain()
									: font.style().equalsIgnoreCase(awaited.getStyle())))
					.findFirst();
			if (found.isPresent()) {
				awaited = null;
				open(found.get());
			}
		}
	}

	private void shelfChanged() {
		if (grid.isDisposed()) {
			return;
		}
		bar.show(shelf);
		openAwaited();
		if (openCase.font() == null && awaited == null || !shelf.isReading() && openCase.font() == null) {
			shelf.index().fonts().stream().map(IndexedFont::entry)
					.filter(font -> font.family().equals(FIRST_FAMILY) && font.names().isPlain()).findFirst()
					.or(() -> shelf.isReading() ? Optional.empty()
							: shelf.index().fonts().stream().map(IndexedFont::entry).findFirst())
					.ifPresent(this::open);
		}
		if (shelf.isComplete() && shelf.index().fonts().isEmpty()) {
			grid.show(null, List.of(), Messages.TypeCaseView_noFonts);
		}
	}

	@Override
	public void open(FontEntry font) {
		awaited = null;
		openCase.open(font);
		bar.showFont(font);
	}

	@Override
	public void search(String words) {
		openCase.search(words);
	}

	@Override
	public void filter(GlyphFilter filter) {
		openCase.filter(filter);
	}

	@Override
	public void toGrid() {
		grid.setFocus();
		if (grid.selection().isEmpty()) {
			grid.go(0);
		}
	}

	@Override
	public void chooseFirst() {
		if (openCase.isAnswered() && !grid.entries().isEmpty()) {
			toGrid();
			grid.choose();
		}
	}

	@Override
	public FontShelf shelf() {
		return shelf;
	}

	@Override
	public FontEntry font() {
		return openCase.font();
	}

	@Override
	public void found(GlyphChart chart, List<GlyphEntry> entries) {
		if (!grid.isDisposed()) {
			grid.show(chart, entries, bar.words().isBlank() ? Messages.TypeCaseView_noneOfKind
					: NLS.bind(Messages.TypeCaseView_noneFound, bar.words().strip()));
		}
	}

	@Override
	public void failed(String message) {
		if (!grid.isDisposed()) {
			grid.show(null, List.of(), message);
		}
	}

	private final class GridClient implements GlyphGrid.Client {

		@Override
		public void selected(GlyphEntry entry) {
			foot.show(entry);
		}

		@Override
		public void chosen(GlyphEntry entry) {
			placer.place(bench(), grid.chart(), entry, Optional.empty());
		}

		@Override
		public void typed(char character) {
			bar.type(character);
		}
	}

	/** Whether there is anything to make a chart of. */
	boolean canPrint() {
		return grid.chart() != null && !grid.entries().isEmpty();
	}

	/** What a file of the chart might be called, without an ending. */
	String chartName() {
		return grid.chart().face().fullName().replaceAll("[\\\\/:*?\"<>|]", "-"); //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** Writes the chart of the glyphs that are shown to a file; returns at once. */
	public void print(Path target) {
		if (!ChartFiles.canWrite(target)) {
			foot.say(NLS.bind(Messages.TypeCaseView_ending, target.getFileName()));
			return;
		}
		boolean inches = LengthUnit.shown() == LengthUnit.INCH;
		ChartSheet sheet = new ChartSheet(inches ? Paper.LETTER : Paper.A4, inches, Optional.of(LocalDate.now()));
		new ChartJob(new ChartPages(grid.chart(), grid.entries(), sheet), target,
				message -> grid.getDisplay().asyncExec(() -> foot.say(message))).schedule();
	}

	/** The cells. */
	public GlyphGrid grid() {
		return grid;
	}

	/** What stands above the cells. */
	public CaseBar bar() {
		return bar;
	}

	/** What stands below the cells. */
	public CaseFoot foot() {
		return foot;
	}

	/** Whether all that was asked is answered and all fonts are known. */
	public boolean isSettled() {
		return openCase.isAnswered() && !shelf.isReading() && openCase.font() != null;
	}

	@Override
	public void setFocus() {
		grid.setFocus();
	}

	@Override
	public void dispose() {
		if (front != null) {
			front.dispose();
			shelf.close();
			openCase.close();
		}
		super.dispose();
	}
}
