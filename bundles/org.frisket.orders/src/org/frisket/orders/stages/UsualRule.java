package org.frisket.orders.stages;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Stage;
import org.frisket.orders.StageStep;

/** The rules that the order book brings. Common practice, no source. */
enum UsualRule implements StageRule {

	/** Approval is of something that was shown. */
	PROOF_BEFORE_APPROVAL {

		@Override
		public String title() {
			return Messages.UsualRule_proof;
		}

		@Override
		public String description() {
			return Messages.UsualRule_proofDoes;
		}

		/** Many a customer approves by telephone. */
		@Override
		public boolean isUsual() {
			return false;
		}

		@Override
		public Optional<String> objection(StageStep step, Supplier<List<String>> blocking) {
			return step.to() == Stage.APPROVED && step.reaches(Stage.APPROVED) && !step.proof()
					? Optional.of(Messages.UsualRule_noProof)
					: Optional.empty();
		}
	},

	/** What is known to fail wastes card and blades. */
	NO_BLOCKING_FINDINGS {

		@Override
		public String title() {
			return Messages.UsualRule_findings;
		}

		@Override
		public String description() {
			return Messages.UsualRule_findingsDoes;
		}

		@Override
		public Optional<String> objection(StageStep step, Supplier<List<String>> blocking) {
			if (!step.reaches(Stage.CUT)) {
				return Optional.empty();
			}
			List<String> findings = blocking.get();
			return findings.isEmpty() ? Optional.empty()
					: Optional.of(NLS.bind(Messages.UsualRule_blocking, findings.size(),
							String.join("; ", findings.subList(0, Math.min(TOLD, findings.size())))));
		}
	},

	/** Whoever did the work wants to know why it is to be done again. */
	REMARK_WHEN_GOING_BACK {

		@Override
		public String title() {
			return Messages.UsualRule_back;
		}

		@Override
		public String description() {
			return Messages.UsualRule_backDoes;
		}

		@Override
		public Optional<String> objection(StageStep step, Supplier<List<String>> blocking) {
			return step.isBack() && step.remark().isBlank() ? Optional.of(Messages.UsualRule_noRemark) : Optional.empty();
		}
	};

	private static final int TOLD = 3;

	@Override
	public String id() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}
}
