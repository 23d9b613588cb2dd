package org.frisket.ui.orders.internal.keep;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.frisket.geometry.Tolerance;
import org.frisket.orders.compare.JobComparison;
import org.frisket.orders.compare.Row;
import org.frisket.orders.compare.Side;
import org.frisket.orders.paper.ComparedJobs;
import org.frisket.page.flow.Figures;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.ui.LengthUnit;
import org.frisket.ui.orders.internal.Pictures;

/**
 * What two desks have made of a job, as two pictures in one scale. They are drawn off the UI thread while the words can
 * be read already.
 */
final class MergePictures extends Composite {

	private static final int WIDTH_PX = 320;
	private static final int HEIGHT_PX = 180;
	private static final int SPACE_PX = 4;
	private static final int FULL = 100;

	private final List<Row> rows;
	private final MergeCanvas mine;
	private final MergeCanvas theirs;
	private final Label scale;
	private final Drawing drawing;

	/** @param chosen told of which row an element was clicked */
	MergePictures(Composite parent, JobComparison comparison, List<Row> rows, Consumer<Row> chosen) {
		super(parent, SWT.NONE);
		this.rows = rows;
		GridLayoutFactory.fillDefaults().spacing(0, SPACE_PX).applyTo(this);
		mine = canvas(Messages.MergeDialog_mine, chosen);
		theirs = canvas(Messages.MergeDialog_theirs, chosen);
		scale = new Label(this, SWT.WRAP);
		// as high as it will be, so that the window fits from the beginning
		scale.setText(NLS.bind(Messages.MergePictures_legend, Messages.MergePictures_waiting));
		GridDataFactory.fillDefaults().hint(WIDTH_PX, scale.computeSize(WIDTH_PX, SWT.DEFAULT).y).applyTo(scale);
		scale.setText(Messages.MergePictures_waiting);
		int density = Math.max(1, Math.round(getMonitor().getZoom() / (float) FULL));
		drawing = new Drawing(comparison, density, getDisplay());
		addListener(SWT.Dispose, event -> drawing.cancel());
		drawing.schedule();
	}

	private MergeCanvas canvas(String name, Consumer<Row> chosen) {
		new Label(this, SWT.NONE).setText(name);
		MergeCanvas canvas = new MergeCanvas(this, name, rows, chosen);
		GridDataFactory.fillDefaults().hint(WIDTH_PX, HEIGHT_PX).applyTo(canvas);
		return canvas;
	}

	/** Has the element of a row stand out. @param row null for none */
	void select(Row row) {
		String element = row == null ? null : row.element().orElse(null);
		mine.select(element);
		theirs.select(element);
	}

	private void show(Optional<ComparedJobs> drawn, int density) {
		if (isDisposed()) {
			return;
		}
		drawn.ifPresent(jobs -> {
			mine.show(jobs.mine(), jobs.bar(), density);
			theirs.show(jobs.theirs(), jobs.bar(), density);
		});
		say(drawn.map(jobs -> NLS.bind(Messages.MergePictures_legend, jobs.text()))
				.orElse(Messages.MergePictures_nothing));
	}

	private void say(String text) {
		if (!isDisposed()) {
			scale.setText(text.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
			layout(true, true);
		}
	}

	private final class Drawing extends Job {

		/** Copies, for the comparison is worked with meanwhile. */
		private final org.frisket.model.Job ours;
		private final org.frisket.model.Job others;
		private final int density;
		private final Display display;

		Drawing(JobComparison comparison, int density, Display display) {
			super(Messages.MergePictures_drawing);
			ours = EcoreUtil.copy(comparison.job(Side.MINE));
			others = EcoreUtil.copy(comparison.job(Side.THEIRS));
			this.density = density;
			this.display = display;
			setSystem(true);
			setPriority(SHORT);
		}

		@Override
		protected IStatus run(IProgressMonitor monitor) {
			try {
				JobPreparer preparer = new JobPreparer(FontLibraries.installed());
				PreparedJob here = prepare(preparer, ours, monitor);
				PreparedJob there = prepare(preparer, others, monitor);
				List<String> changed = rows.stream().flatMap(row -> row.element().stream()).toList();
				Optional<ComparedJobs> drawn = ComparedJobs.of(here, there, changed,
						WIDTH_PX - 2 * MergeCanvas.MARGIN_PX,
						HEIGHT_PX - 2 * MergeCanvas.MARGIN_PX - MergeCanvas.BAR_PX, density,
						new Figures(LengthUnit.shown() == LengthUnit.INCH));
				tell(() -> show(drawn, density));
			} catch (CancellationException e) {
				return Status.CANCEL_STATUS;
			} catch (IOException | IllegalArgumentException e) {
				tell(() -> say(String.valueOf(e.getMessage())));
			} catch (RuntimeException e) {
				// the words beside can be chosen by all the same
				ILog.of(MergePictures.class).error(getName(), e);
				tell(() -> say(Messages.MergePictures_failed));
			}
			return Status.OK_STATUS;
		}

		private PreparedJob prepare(JobPreparer preparer, org.frisket.model.Job job, IProgressMonitor monitor) {
			return preparer.prepare(job, Tolerance.DEFAULT, Pictures.monitor(monitor));
		}

		private void tell(Runnable news) {
			if (!display.isDisposed()) {
				display.asyncExec(news);
			}
		}
	}
}
