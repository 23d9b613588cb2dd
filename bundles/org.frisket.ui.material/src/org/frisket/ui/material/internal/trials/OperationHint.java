package org.frisket.ui.material.internal.trials;

import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IAdapterFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.frisket.material.advice.Work;
import org.frisket.material.desk.DeskState;
import org.frisket.material.trials.StockFacts;
import org.frisket.model.OperationKind;
import org.frisket.ui.material.internal.machines.StudioDesk;
import org.frisket.ui.views.OperationAdvice;

/** Has the form of operations say what the studio's trials, or its rules of thumb, advise. */
public final class OperationHint implements IAdapterFactory {

	@Override
	public <T> T getAdapter(Object form, Class<T> wanted) {
		OperationAdvice advice = (stock, kind, tool, told) -> new Asked(stock, kind, tool, told)::stop;
		return wanted == OperationAdvice.class ? wanted.cast(advice) : null;
	}

	@Override
	public Class<?>[] getAdapterList() {
		return new Class<?>[] { OperationAdvice.class };
	}

	/** A question that is answered anew whenever the studio knows more. */
	private static final class Asked implements StudioDesk.Listener {

		private final String stock;
		private final OperationKind kind;
		private final String tool;
		private final Consumer<String> told;
		private final Advising advising;

		Asked(String stock, OperationKind kind, String tool, Consumer<String> told) {
			this.stock = stock;
			this.kind = kind;
			this.tool = tool;
			this.told = told;
			advising = new Advising(Display.getCurrent(), answer -> told.accept(words(answer)));
			StudioDesk desk = StudioDesk.get();
			desk.addListener(this);
			if (desk.isKnown()) {
				deskChanged();
			} else {
				desk.refresh();
			}
		}

		@Override
		public void deskChanged() {
			DeskState state = StudioDesk.get().state();
			Optional<Work> work = state.stock(stock).flatMap(found -> state.usualMachine().flatMap(machine -> state
					.usualTool(kind, tool).map(with -> new Work(StockFacts.of(found), machine, with, kind))));
			work.ifPresentOrElse(found -> advising.ask(state, found, null), () -> {
				advising.stop();
				told.accept(""); //$NON-NLS-1$
			});
		}

		private static String words(Advising.Answer answer) {
			Work work = answer.work();
			return NLS.bind(Messages.OperationHint_words,
					new Object[] { SettingsWords.of(answer.advice().settings(), work.machine()),
							answer.advice().confidence().text(), work.machine().name(), work.tool().name() });
		}

		void stop() {
			advising.stop();
			StudioDesk.get().removeListener(this);
		}
	}
}
