package org.frisket.ui.views.internal.way;

import java.util.List;
import java.util.Optional;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.IHandlerService;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.model.Wording;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.Severity;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.LastExports;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.SeverityText;

/** A station on the way of a job. */
public enum Station {

	WORDING(Views.PROPERTIES_ID) {
		@Override
		String label() {
			return Messages.Station_wording;
		}

		@Override
		String tip() {
			return Messages.Station_wordingTip;
		}

		@Override
		String state(JobOnBench bench) {
			return counted(all(bench, Wording.class).size(), Messages.Station_noWording, Messages.Station_oneWording,
					Messages.Station_wordings);
		}

		@Override
		List<? extends Element> elements(JobOnBench bench) {
			return all(bench, Wording.class);
		}
	},

	OUTLINES(Views.STACK_ID) {
		@Override
		String label() {
			return Messages.Station_outlines;
		}

		@Override
		String tip() {
			return Messages.Station_outlinesTip;
		}

		@Override
		String state(JobOnBench bench) {
			Optional<PreparedJob> prepared = bench.prepared();
			if (prepared.isEmpty()) {
				return Messages.Station_working;
			}
			int pieces = prepared.get().elements().mapToInt(element -> element.region().pieces().size()).sum();
			int nodes = prepared.get().elements().mapToInt(element -> element.region().nodeCount()).sum();
			if (pieces == 0) {
				return Messages.Station_noOutlines;
			}
			return pieces == 1 ? NLS.bind(Messages.Station_onePiece, nodes)
					: NLS.bind(Messages.Station_pieces, pieces, nodes);
		}
	},

	MATS(Views.PROPERTIES_ID) {
		@Override
		String label() {
			return Messages.Station_mats;
		}

		@Override
		String tip() {
			return Messages.Station_matsTip;
		}

		@Override
		String state(JobOnBench bench) {
			return counted(all(bench, Mat.class).size(), Messages.Station_noMats, Messages.Station_oneMat,
					Messages.Station_matCount);
		}

		@Override
		List<? extends Element> elements(JobOnBench bench) {
			return all(bench, Mat.class);
		}
	},

	MAKEREADY(Views.MAKEREADY_ID) {
		@Override
		String label() {
			return Messages.Station_makeready;
		}

		@Override
		String tip() {
			return Messages.Station_makereadyTip;
		}

		@Override
		String state(JobOnBench bench) {
			return bench.isUpToDate() ? SeverityText.counts(bench.findings()) : Messages.Station_checking;
		}

		@Override
		Optional<Severity> worst(JobOnBench bench) {
			return bench.isUpToDate() && !bench.findings().isEmpty()
					? Optional.of(bench.findings().get(0).severity())
					: Optional.empty();
		}
	},

	SHEETS(Views.SHEETS_ID) {
		@Override
		String label() {
			return Messages.Station_sheets;
		}

		@Override
		String tip() {
			return Messages.Station_sheetsTip;
		}

		@Override
		String state(JobOnBench bench) {
			return bench.job().getSheets().isEmpty() ? Messages.Station_noSheets
					: counted(bench.job().getSheets().size(), "", Messages.Station_oneSheet, Messages.Station_sheetCount); //$NON-NLS-1$
		}

		@Override
		String state(JobOnBench bench, WayNotes notes) {
			return notes.sheets().isEmpty() ? state(bench) : notes.sheets();
		}
	},

	RUN(Views.RUN_ID) {
		@Override
		String label() {
			return Messages.Station_run;
		}

		@Override
		String tip() {
			return Messages.Station_runTip;
		}

		@Override
		String state(JobOnBench bench) {
			return ""; //$NON-NLS-1$
		}

		@Override
		String state(JobOnBench bench, WayNotes notes) {
			return notes.run();
		}

		@Override
		boolean isFresh(JobOnBench bench, WayNotes notes) {
			return notes.isRunUpToDate();
		}
	},

	/** What is handed out is chosen in a form, and not in a view. */
	HAND_OFF("") { //$NON-NLS-1$
		@Override
		String label() {
			return Messages.Station_handOff;
		}

		@Override
		String tip() {
			return Messages.Station_handOffTip;
		}

		@Override
		String state(JobOnBench bench) {
			return LastExports.of(bench.job()).map(file -> file.getFileName().toString()).orElse(Messages.Station_notYet);
		}

		@Override
		boolean isFresh(JobOnBench bench, WayNotes notes) {
			return LastExports.of(bench.job()).isPresent();
		}

		@Override
		public void open(IWorkbenchPage page, JobOnBench bench) throws PartInitException {
			if (bench == null) {
				return;
			}
			try {
				page.getWorkbenchWindow().getService(IHandlerService.class).executeCommand(Bench.EXPORT_COMMAND_ID, null);
			} catch (CommandException e) {
				throw new PartInitException(e.getMessage(), e);
			}
		}
	};

	private final String viewId;

	Station(String viewId) {
		this.viewId = viewId;
	}

	/** What it is called. */
	abstract String label();

	/** What happens when one goes there. */
	abstract String tip();

	/** How far the job is there, in words and numbers. */
	abstract String state(JobOnBench bench);

	/** The same with what others know of the job. */
	String state(JobOnBench bench, WayNotes notes) {
		return state(bench);
	}

	/** What is selected when one goes there; empty leaves the selection alone. */
	List<? extends Element> elements(JobOnBench bench) {
		return List.of();
	}

	/** The gravest thing to be said there. */
	Optional<Severity> worst(JobOnBench bench) {
		return Optional.empty();
	}

	/** Whether what is said there is that of the job as it is now. */
	boolean isFresh(JobOnBench bench, WayNotes notes) {
		return bench.isUpToDate();
	}

	/** Opens what belongs to the station. */
	public void open(IWorkbenchPage page, JobOnBench bench) throws PartInitException {
		if (bench != null && !elements(bench).isEmpty()) {
			bench.select(elements(bench));
		}
		page.showView(viewId);
	}

	private static <E extends Element> List<E> all(JobOnBench bench, Class<E> type) {
		return Jobs.elements(bench.job()).stream().filter(type::isInstance).map(type::cast).toList();
	}

	private static String counted(int count, String none, String one, String many) {
		if (count == 0) {
			return none;
		}
		return count == 1 ? one : NLS.bind(many, count);
	}
}
