package org.frisket.ui.material.internal.machines;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.jface.wizard.IWizardPage;
import org.eclipse.jface.wizard.Wizard;
import org.frisket.geometry.options.Option;
import org.frisket.material.StockIds;
import org.frisket.material.desk.DeskState;
import org.frisket.material.desk.Profile;
import org.frisket.material.tools.MachineOptions;
import org.frisket.material.tools.ManualQuestions;
import org.frisket.material.tools.Problem;

/** Asks what the manual of a machine says, one question a page. It can be finished at any page: the rest stays as usual. */
final class MachineWizard extends Wizard {

	private final DeskState state;
	private final Consumer<Profile> made;

	/** @param made is given the machine that was described */
	MachineWizard(DeskState state, Consumer<Profile> made) {
		this.state = state;
		this.made = made;
		setWindowTitle(Messages.MachineWizard_title);
		setDefaultPageImageDescriptor(RoomIcon.MACHINE.descriptor());
	}

	@Override
	public void addPages() {
		List<ManualQuestions.Question> questions = ManualQuestions.all();
		for (int i = 0; i < questions.size(); i++) {
			addPage(new QuestionPage(i + 1, questions.size(), questions.get(i)));
		}
	}

	private Map<String, String> answers() {
		Map<String, String> answers = new LinkedHashMap<>();
		for (IWizardPage page : getPages()) {
			answers.putAll(((QuestionPage) page).answers());
		}
		return answers;
	}

	/** What is wrong with the answers to a question, alone and together with those before it. */
	List<Problem> problems(ManualQuestions.Question question, boolean isLast) {
		List<Problem> problems = new ArrayList<>(question.problems(own(question)));
		if (problems.isEmpty()) {
			List<String> names = question.options().stream().map(Option::name).toList();
			ManualQuestions.problems(answers()).stream().filter(problem -> isLast || names.contains(problem.option()))
					.forEach(problems::add);
		}
		return problems;
	}

	private Map<String, String> own(ManualQuestions.Question question) {
		Map<String, String> own = new LinkedHashMap<>(answers());
		own.keySet().retainAll(question.options().stream().map(Option::name).toList());
		return own;
	}

	@Override
	public boolean canFinish() {
		return ManualQuestions.problems(answers()).isEmpty();
	}

	@Override
	public boolean performFinish() {
		Map<String, String> answers = answers();
		String name = answers.getOrDefault("name", "").strip(); //$NON-NLS-1$ //$NON-NLS-2$
		String id = StockIds.free(name.isEmpty() ? Messages.MachineWizard_nameless : name,
				state::hadMachine);
		if (name.isEmpty()) {
			answers.put("name", Messages.MachineWizard_nameless); //$NON-NLS-1$
		}
		made.accept(Profile.of(MachineOptions.machine(id, answers)));
		return true;
	}
}
