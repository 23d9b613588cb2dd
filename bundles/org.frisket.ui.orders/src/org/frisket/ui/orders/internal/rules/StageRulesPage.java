package org.frisket.ui.orders.internal.rules;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.frisket.orders.OrderException;
import org.frisket.orders.stages.StageRule;
import org.frisket.orders.stages.StageRules;
import org.frisket.studio.Studio;
import org.frisket.ui.orders.internal.Words;

/** The rules that must hold before a job goes to another stage, each on or off for all desks of the studio. */
public final class StageRulesPage extends PreferencePage implements IWorkbenchPreferencePage {

	private static final int LINE_PX = 440;
	private static final int INDENT_PX = 20;

	private final Map<StageRule, Button> boxes = new LinkedHashMap<>();

	@Override
	public void init(IWorkbench workbench) {
		setDescription(Messages.StageRulesPage_description);
	}

	@Override
	protected Control createContents(Composite parent) {
		Composite area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
		StageRules rules = new StageRules(Studio.folder());
		for (StageRule rule : StageRules.all()) {
			Button box = new Button(area, SWT.CHECK);
			box.setText(Words.sentence(rule.title()).replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
			box.setToolTipText(rule.description());
			GridDataFactory.fillDefaults().indent(0, 8).applyTo(box);
			Label does = new Label(area, SWT.WRAP);
			does.setText(rule.description().replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
			GridDataFactory.fillDefaults().grab(true, false).indent(INDENT_PX, 0).hint(LINE_PX, SWT.DEFAULT).applyTo(does);
			boxes.put(rule, box);
			try {
				box.setSelection(rules.isOn(rule));
			} catch (IOException e) {
				box.setSelection(rule.isUsual());
				setErrorMessage(e.getMessage());
			}
		}
		return area;
	}

	@Override
	protected void performDefaults() {
		boxes.forEach((rule, box) -> box.setSelection(rule.isUsual()));
		super.performDefaults();
	}

	@Override
	public boolean performOk() {
		StageRules rules = new StageRules(Studio.folder());
		try {
			for (Map.Entry<StageRule, Button> each : boxes.entrySet()) {
				boolean on = each.getValue().getSelection();
				// what nobody has decided stays undecided
				if (on != rules.isOn(each.getKey())) {
					rules.set(each.getKey().id(), on);
				}
			}
			return true;
		} catch (IOException | OrderException e) {
			setErrorMessage(Words.sentence(e.getMessage()));
			return false;
		}
	}
}
