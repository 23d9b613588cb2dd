package org.frisket.ui.orders.internal.reports;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.part.ViewPart;
import org.frisket.model.WholeFile;
import org.frisket.orders.paper.PaperForm;
import org.frisket.orders.paper.report.ReportChart;
import org.frisket.orders.paper.report.ReportPaper;
import org.frisket.orders.reports.Report;
import org.frisket.orders.reports.ReportSource;
import org.frisket.orders.work.StudioReports;
import org.frisket.page.flow.Figures;
import org.frisket.prepare.layout.Paper;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;
import org.frisket.ui.orders.internal.Named;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.studio.StoreJob;

/** How the studio is doing: one report at a time, as a chart and as the table it is drawn from. */
public final class ReportsView extends ViewPart {

	private static final String CONTEXT_ID = "org.frisket.ui.orders.reports.context"; //$NON-NLS-1$
	private static final String NONE = "\u2013"; //$NON-NLS-1$
	private static final int SPACE_PX = 4;
	private static final int TABLE_PX = 150;

	private final List<ReportSource> sources = StudioReports.all();
	private final Runnable watcher = this::read;
	private Combo choice;
	private ScrolledComposite scroll;
	private ChartCanvas chart;
	private Table table;
	private Label notice;
	private Report report;
	private int shown = -1;

	@Override
	public void createPartControl(Composite parent) {
		Composite area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(SPACE_PX, SPACE_PX).spacing(SPACE_PX, SPACE_PX).applyTo(area);
		choice = new Combo(area, SWT.READ_ONLY | SWT.DROP_DOWN);
		choice.setToolTipText(Messages.ReportsView_choice);
		Named.as(Messages.ReportsView_choice, choice);
		sources.forEach(source -> choice.add(source.title()));
		choice.select(0);
		choice.addListener(SWT.Selection, event -> read());
		GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(choice);
		scroll = new ScrolledComposite(area, SWT.V_SCROLL);
		scroll.setExpandHorizontal(true);
		scroll.setExpandVertical(true);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(scroll);
		chart = new ChartCanvas(scroll);
		scroll.setContent(chart);
		scroll.addListener(SWT.Resize, event -> fit());
		table = new Table(area, SWT.BORDER | SWT.FULL_SELECTION);
		table.setHeaderVisible(true);
		Named.as(() -> report == null ? choice.getText() : report.title(), table);
		GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, TABLE_PX).applyTo(table);
		notice = new Label(area, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(notice);
		getSite().getService(IContextService.class).activateContext(CONTEXT_ID);
		OrderDesk.get().addListener(watcher);
		read();
	}

	private void fit() {
		chart.room(scroll.getClientArea().height);
		scroll.setMinHeight(chart.computeSize(scroll.getClientArea().width, SWT.DEFAULT).y);
		chart.redraw();
	}

	/** The chosen report is read anew, in a while. */
	private void read() {
		if (choice.isDisposed()) {
			return;
		}
		int wanted = choice.getSelectionIndex();
		StudioFolder studio = Studio.folder();
		new StoreJob<>(Messages.ReportsView_reading, () -> sources.get(wanted).read(studio, Clock.systemDefaultZone()),
				read -> show(wanted, read), this::say).schedule();
	}

	private void show(int which, Report read) {
		if (choice.isDisposed() || choice.getSelectionIndex() != which) {
			return;
		}
		report = read;
		shown = which;
		chart.show(ReportChart.of(read));
		fit();
		fill();
		say(""); //$NON-NLS-1$
	}

	private void fill() {
		table.setRedraw(false);
		table.removeAll();
		for (TableColumn column : table.getColumns()) {
			column.dispose();
		}
		column(report.heading(), SWT.LEFT);
		report.columns().forEach(each -> column(each.heading(), SWT.RIGHT));
		for (Report.Row row : report.rows()) {
			TableItem item = new TableItem(table, SWT.NONE);
			item.setText(0, row.name());
			for (int i = 0; i < report.columns().size(); i++) {
				OptionalDouble value = row.values().get(i);
				item.setText(i + 1, value.isPresent()
						? Figures.number(value.getAsDouble(), report.columns().get(i).decimals())
						: NONE);
			}
		}
		for (TableColumn column : table.getColumns()) {
			column.pack();
		}
		table.setRedraw(true);
	}

	private void column(String title, int side) {
		new TableColumn(table, side).setText(title);
	}

	private void say(String text) {
		if (!notice.isDisposed()) {
			notice.setText(text.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	/** @param by how many reports on; after the last comes the first */
	void go(int by) {
		choice.select(Math.floorMod(choice.getSelectionIndex() + by, sources.size()));
		read();
	}

	/** Asks for a file, and writes the report as a table of comma-separated values. */
	void askForTable() {
		ask(".csv").ifPresent(this::saveTable); //$NON-NLS-1$
	}

	/** Asks for a file, and writes the report with its chart as PDF. */
	void askForPaper() {
		ask(".pdf").ifPresent(this::savePaper); //$NON-NLS-1$
	}

	private Optional<Path> ask(String ending) {
		if (report == null) {
			return Optional.empty();
		}
		FileDialog dialog = new FileDialog(getSite().getShell(), SWT.SAVE);
		dialog.setFileName(sources.get(shown).word() + '-' + report.day() + ending);
		dialog.setFilterExtensions(new String[] { '*' + ending });
		dialog.setOverwrite(true);
		String chosen = dialog.open();
		if (chosen == null) {
			return Optional.empty();
		}
		boolean ends = chosen.toLowerCase(Locale.ROOT).endsWith(ending);
		return Optional.of(Path.of(ends ? chosen : chosen + ending));
	}

	private interface Writing {
		void to(Path file) throws IOException;
	}

	/** @param file that is written, or written over */
	public void saveTable(Path file) {
		byte[] text = report.toCsv().getBytes(StandardCharsets.UTF_8);
		save(file, to -> WholeFile.write(out -> out.write(text), to));
	}

	/** @param file that is written, or written over */
	public void savePaper(Path file) {
		Report printed = report;
		PaperForm form = new PaperForm(Paper.A4, false, ZoneId.systemDefault());
		save(file, to -> WholeFile.write(out -> ReportPaper.write(printed, form, out), to));
	}

	private void save(Path file, Writing writing) {
		new StoreJob<>(NLS.bind(Messages.ReportsView_writing, file.getFileName()), () -> {
			try {
				writing.to(file);
			} catch (IOException e) {
				throw new IOException(NLS.bind(Messages.ReportsView_notWritten, file, WholeFile.reason(e)), e);
			}
			return file;
		}, written -> say(NLS.bind(Messages.ReportsView_written, written)), this::say).schedule();
	}

	/** The report that is seen; empty before it is read. */
	public Optional<Report> report() {
		return Optional.ofNullable(report);
	}

	/** What is said at the foot. */
	public String notice() {
		return notice.getText();
	}

	@Override
	public void setFocus() {
		choice.setFocus();
	}

	@Override
	public void dispose() {
		OrderDesk.get().removeListener(watcher);
		super.dispose();
	}
}
