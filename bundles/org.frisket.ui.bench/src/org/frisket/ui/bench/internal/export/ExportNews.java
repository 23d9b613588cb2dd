package org.frisket.ui.bench.internal.export;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;
import org.frisket.export.drive.Drive;
import org.frisket.export.plan.HandoffReport;

/** How exports ended, in words. */
final class ExportNews {

	/** More would fill the screen. */
	private static final int TOLD = 5;

	private ExportNews() {
	}

	static String exported(List<Path> files, Optional<Drive> drive) {
		String told = files.size() == 1 ? NLS.bind(Messages.ExportRun_exported, files.get(0))
				: NLS.bind(Messages.ExportRun_exportedAll, files.size(), files.get(0).getParent());
		return drive.map(each -> NLS.bind(Messages.ExportRun_pull, told, each.name())).orElse(told);
	}

	static String cancelled(ExportRequest request, List<Path> files, Optional<String> deaf) {
		Path place = request.handoff().destination().path();
		String told = files.isEmpty() ? NLS.bind(Messages.ExportRun_cancelled, place)
				: NLS.bind(Messages.ExportRun_cancelledAfter, files.size(), place);
		return deaf.map(bundle -> NLS.bind(Messages.ExportRun_deaf, told, bundle)).orElse(told);
	}

	/** Each file that was not written, with the reason, and how many were. */
	static String failed(HandoffReport report) {
		List<HandoffReport.Outcome> failed = report.failed();
		String troubles = failed.stream().limit(TOLD).map(outcome -> outcome.trouble().orElse("")) //$NON-NLS-1$
				.collect(Collectors.joining("\n")); //$NON-NLS-1$
		if (failed.size() > TOLD) {
			troubles += '\n' + NLS.bind(Messages.ExportDialog_more, failed.size() - TOLD);
		}
		return report.outcomes().size() == 1 ? troubles
				: NLS.bind(Messages.ExportRun_someFailed,
						new Object[] { troubles, report.written().size(), report.outcomes().size() });
	}
}
