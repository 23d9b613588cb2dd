package org.frisket.ui.sheets.internal.sheets;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.model.Job;
import org.frisket.model.Laying;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;
import org.frisket.sheets.imposing.LayingChoices;
import org.frisket.ui.LengthText;
import org.frisket.ui.LengthUnit;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.material.internal.StudioShelf;
import org.frisket.ui.sheets.internal.sheets.surface.Board;
import org.frisket.ui.sheets.internal.sheets.surface.PartPicture;
import org.frisket.ui.sheets.internal.sheets.surface.SheetsSurface;
import org.frisket.ui.views.internal.BenchView;
import org.frisket.ui.views.internal.TextKeys;

/**
 * The sheets of the job in front, with the parts on them. They are laid by themselves at a button, and moved, turned and
 * pinned by hand; every change is a step of undo of the job.
 */
public final class SheetsView extends BenchView implements Board {

	private LayBar bar;
	private SheetsSurface surface;
	private MissingLine missingLine;
	private ReadJob reader;
	private LayRun run;
	private LayFeedback feedback;
	private SheetActions actions;
	private Reading reading = Reading.NONE;
	private Obstacles obstacles = new Obstacles(reading);
	private Offcut offcut;
	private SheetPrints prints;
	/** The job whose sheets are shown; null if none are. */
	private Job shown;
	/** What the bar shows, and in which unit. */
	private Laying laying;
	private LengthUnit unit = LengthUnit.shown();
	/** The shelf may be looked at later than the job, and then knows names and sizes. */
	private final Runnable shelfChanged = this::shelfChanged;

	@Override
	protected Control createContent(Composite parent) {
		Composite content = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(content);
		actions = new SheetActions(this);
		prints = new SheetPrints(parent.getDisplay(), () -> {
			if (surface != null && !surface.canvas().isDisposed() && !run.isUnderWay()) {
				surface.update();
			}
		});
		bar = new LayBar(content, new TextKeys(getSite()), this::layOrStop);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(bar.control());
		surface = new SheetsSurface(content, this);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(surface.canvas());
		missingLine = new MissingLine(content, () -> actions.forget());
		reader = new ReadJob(parent.getDisplay(), this::read);
		feedback = new LayFeedback(this, surface, bar);
		run = new LayRun(parent.getDisplay(), feedback);
		offcut = new Offcut(parent.getDisplay(), () -> surface.setOffcutShown(true));
		surface.whenSelected(this::partsSelected);
		new SurfaceKeys(getSite(), surface.canvas(), () -> run.giveUp());
		SheetsMenu.on(this, surface.canvas());
		StudioShelf.get().addListener(shelfChanged);
		return content;
	}

	@Override
	protected void benchChanged() {
		run.giveUp();
		reading = Reading.NONE;
		obstacles = new Obstacles(reading);
		shown = bench() == null ? null : bench().job();
		if (shown == null) {
			reader.request(null);
			prints.show(null, reading);
			surface.show(null);
			showNote(Messages.SheetsView_noBench);
			return;
		}
		showContent();
		prints.show(shown, reading);
		surface.show(shown);
		showChoices();
		pictureChanged();
	}

	private void showChoices() {
		laying = shown.getLaying();
		unit = LengthUnit.shown();
		bar.show(shown, StockSizes.of(shown));
	}

	@Override
	public void jobChanged() {
		if (bench().job() != shown) {
			benchChanged();
			return;
		}
		run.giveUp();
		offcut.forget();
		if (shown.getLaying() != laying) {
			showChoices();
		}
		surface.update();
		say();
	}

	/** Regions are another; what the sheets come to is worked out anew. */
	@Override
	public void pictureChanged() {
		if (unit != LengthUnit.shown()) {
			showChoices();
		}
		if (bench() != null && bench().prepared().isPresent()) {
			reader.request(ReadJob.Request.of(shown, bench().prepared().get(), file()));
		}
		say();
	}

	/** Where the job's file is; null if it has none yet. */
	Path file() {
		return bench() == null ? null : Bench.fileOf(bench());
	}

	private void read(Reading news) {
		if (surface.canvas().isDisposed()) {
			return;
		}
		reading = news;
		obstacles = new Obstacles(news);
		offcut.forget();
		prints.show(shown, news);
		if (!run.isUnderWay()) {
			surface.update();
		}
		surface.flags().plant(news.findings(shown.getSheets()));
		missingLine.show(news.missing(), news.troubles());
		say();
	}

	private void shelfChanged() {
		if (shown != null && !surface.canvas().isDisposed()) {
			bar.offer(StockSizes.of(shown));
			surface.update();
		}
	}

	private void partsSelected() {
		offcut.forget();
		surface.setOffcutShown(false);
	}

	/** Says under the bar how it stands. */
	private void say() {
		if (bench() == null || run.isUnderWay()) {
			return;
		}
		surface.setHint(shown.getSheets().isEmpty() ? Messages.SheetsView_empty : ""); //$NON-NLS-1$
		String title = shown.getSheets().isEmpty() ? Messages.SheetsView_title
				: NLS.bind(Messages.SheetsView_titleCount, shown.getSheets().size());
		if (!title.equals(getPartName())) {
			setPartName(title);
		}
		bar.say(reading.unlaid() > 0 && !shown.getSheets().isEmpty()
				? NLS.bind(reading.unlaid() == 1 ? Messages.SheetsView_oneUnlaid : Messages.SheetsView_unlaid,
						reading.unlaid())
				: ""); //$NON-NLS-1$
	}

	/** Lays the parts, or stops where that is under way. */
	void layOrStop() {
		if (run.isUnderWay()) {
			run.stop();
		} else {
			lay();
		}
	}

	/** Lays the parts. */
	void lay() {
		if (bench() != null && !run.isUnderWay() && !bar.hasTrouble() && bench().prepared().isPresent()) {
			run.begin(bench(), LayingChoices.of(bar.choices()), file());
		}
	}

	/** What is known of the sheets now. */
	Reading reading() {
		return reading;
	}

	Offcut offcut() {
		return offcut;
	}

	SheetActions actions() {
		return actions;
	}

	/** The job on the bench in front, for those who act on it; null if there is none. */
	JobOnBench front() {
		return bench();
	}

	/** The surface with the sheets. */
	public SheetsSurface surface() {
		return surface;
	}

	/** The bar above it. */
	LayBar bar() {
		return bar;
	}

	/** Takes a job along; a message says why if it cannot be read. */
	public void takeAlong(Path file) {
		actions.takeAlong(file);
	}

	/** What the bar says. */
	public String said() {
		return bar.said();
	}

	/** The button that lays the parts, or stops that. */
	public Control layButton() {
		return bar.button();
	}

	/** What of print and cuts is seen, and toggled. */
	@Override
	public SheetPrints prints() {
		return prints;
	}

	/** The current sheet, for commands that are about one. */
	@Override
	public <T> T getAdapter(Class<T> type) {
		return type == Sheet.class && front() != null ? type.cast(surface.current()) : super.getAdapter(type);
	}

	/** Whether what is seen is that of the job as it is now, and nothing is being laid. */
	public boolean isSettled() {
		return bench() != null && bench().isUpToDate() && !run.isUnderWay() && reader.getState() == org.eclipse.core.runtime.jobs.Job.NONE;
	}

	@Override
	public List<String> caption(Sheet sheet) {
		String planned = feedback.caption(sheet);
		return planned != null ? List.of(planned, LengthText.size(sheet.getWidth(), sheet.getHeight()))
				: SheetCaption.of(sheet, shown, reading);
	}

	@Override
	public String shortCaption(Sheet sheet) {
		String planned = feedback.shortCaption(sheet);
		return planned != null ? planned : SheetCaption.brief(sheet, shown, reading);
	}

	@Override
	public String colour(Sheet sheet) {
		return sheet.getColour();
	}

	@Override
	public Optional<PartPicture> picture(Placement placement) {
		return Optional.ofNullable(reading.pictures().get(PartKey.of(shown, placement)));
	}

	@Override
	public Optional<Bounds> offcut(Sheet sheet) {
		return offcut.of(sheet);
	}

	@Override
	public List<Obstacle> obstacles(List<Move> moves) {
		return obstacles.of(moves);
	}

	@Override
	public Optional<Point> freePlace(Move move) {
		return obstacles.freePlace(move);
	}

	@Override
	public void move(List<Move> moves) {
		actions.move(moves);
	}

	@Override
	public void turn(List<Placement> placements, double degrees) {
		actions.turn(placements, degrees);
	}

	@Override
	public void setFocus() {
		if (!note().isEmpty()) {
			super.setFocus();
		} else if (shown.getSheets().isEmpty()) {
			bar.setFocus();
		} else {
			surface.canvas().setFocus();
		}
	}

	@Override
	public void dispose() {
		if (reader != null) {
			StudioShelf.get().removeListener(shelfChanged);
			reader.request(null);
			run.giveUp();
			offcut.forget();
			prints.dispose();
		}
		super.dispose();
	}
}
