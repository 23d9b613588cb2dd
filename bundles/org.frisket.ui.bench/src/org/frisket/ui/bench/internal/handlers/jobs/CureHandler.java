package org.frisket.ui.bench.internal.handlers.jobs;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.osgi.util.NLS;
import org.frisket.prepare.Finding;
import org.frisket.prepare.checks.Cure;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;

/** Carries out the first cure of the finding of a number, or says what is to be done by hand. */
public final class CureHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) throws ExecutionException {
		JobOnBench job = Adapters.adapt(bench, JobOnBench.class);
		int index = number(event) - 1;
		if (!job.isUpToDate() || !job.areCuresKnown()) {
			bench.say(Messages.CureHandler_soon);
		} else if (index >= job.findings().size()) {
			bench.say(NLS.bind(Messages.CureHandler_none, index + 1));
		} else {
			cure(bench, job, job.findings().get(index));
		}
	}

	private static void cure(BenchEditor bench, JobOnBench job, Finding finding) {
		List<Cure> cures = job.cures(finding);
		if (!job.areCuresKnown(finding)) {
			job.seekCures(finding);
			bench.say(Messages.CureHandler_soon);
		} else if (cures.isEmpty()) {
			bench.say(NLS.bind(Messages.CureHandler_byHand, finding.cure()));
		} else {
			bench.say(null);
			job.cure(cures.get(0));
		}
	}

	private static int number(ExecutionEvent event) throws ExecutionException {
		String text = String.valueOf(event.getParameter(Bench.CURE_NUMBER));
		if (!text.matches("[1-9]\\d{0,3}")) { //$NON-NLS-1$
			throw new ExecutionException("no number of a finding: " + text); //$NON-NLS-1$
		}
		return Integer.parseInt(text);
	}
}
