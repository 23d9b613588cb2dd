/**
 */
package org.frisket.model.impl;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectEList;

import org.frisket.model.Element;
import org.frisket.model.WeedLines;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Weed Lines</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.impl.WeedLinesImpl#getAround <em>Around</em>}</li>
 *   <li>{@link org.frisket.model.impl.WeedLinesImpl#getMargin <em>Margin</em>}</li>
 *   <li>{@link org.frisket.model.impl.WeedLinesImpl#isBetween <em>Between</em>}</li>
 *   <li>{@link org.frisket.model.impl.WeedLinesImpl#getSpacing <em>Spacing</em>}</li>
 *   <li>{@link org.frisket.model.impl.WeedLinesImpl#getClearance <em>Clearance</em>}</li>
 * </ul>
 *
 * @generated
 */
public class WeedLinesImpl extends ElementImpl implements WeedLines {
	/**
	 * The cached value of the '{@link #getAround() <em>Around</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAround()
	 * @generated
	 * @ordered
	 */
	protected EList<Element> around;

	/**
	 * The default value of the '{@link #getMargin() <em>Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMargin()
	 * @generated
	 * @ordered
	 */
	protected static final double MARGIN_EDEFAULT = 5.0;

	/**
	 * The cached value of the '{@link #getMargin() <em>Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMargin()
	 * @generated
	 * @ordered
	 */
	protected double margin = MARGIN_EDEFAULT;

	/**
	 * The default value of the '{@link #isBetween() <em>Between</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isBetween()
	 * @generated
	 * @ordered
	 */
	protected static final boolean BETWEEN_EDEFAULT = true;

	/**
	 * The cached value of the '{@link #isBetween() <em>Between</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isBetween()
	 * @generated
	 * @ordered
	 */
	protected boolean between = BETWEEN_EDEFAULT;

	/**
	 * The default value of the '{@link #getSpacing() <em>Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpacing()
	 * @generated
	 * @ordered
	 */
	protected static final double SPACING_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getSpacing() <em>Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpacing()
	 * @generated
	 * @ordered
	 */
	protected double spacing = SPACING_EDEFAULT;

	/**
	 * The default value of the '{@link #getClearance() <em>Clearance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClearance()
	 * @generated
	 * @ordered
	 */
	protected static final double CLEARANCE_EDEFAULT = 0.5;

	/**
	 * The cached value of the '{@link #getClearance() <em>Clearance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClearance()
	 * @generated
	 * @ordered
	 */
	protected double clearance = CLEARANCE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected WeedLinesImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FrisketPackageImpl.Literals.WEED_LINES;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<Element> getAround() {
		if (around == null) {
			around = new EObjectEList<Element>(Element.class, this, FrisketPackageImpl.WEED_LINES__AROUND);
		}
		return around;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getMargin() {
		return margin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMargin(double newMargin) {
		double oldMargin = margin;
		margin = newMargin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WEED_LINES__MARGIN, oldMargin, margin));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isBetween() {
		return between;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBetween(boolean newBetween) {
		boolean oldBetween = between;
		between = newBetween;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WEED_LINES__BETWEEN, oldBetween, between));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getSpacing() {
		return spacing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpacing(double newSpacing) {
		double oldSpacing = spacing;
		spacing = newSpacing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WEED_LINES__SPACING, oldSpacing, spacing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getClearance() {
		return clearance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClearance(double newClearance) {
		double oldClearance = clearance;
		clearance = newClearance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.WEED_LINES__CLEARANCE, oldClearance, clearance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FrisketPackageImpl.WEED_LINES__AROUND:
				return getAround();
			case FrisketPackageImpl.WEED_LINES__MARGIN:
				return getMargin();
			case FrisketPackageImpl.WEED_LINES__BETWEEN:
				return isBetween();
			case FrisketPackageImpl.WEED_LINES__SPACING:
				return getSpacing();
			case FrisketPackageImpl.WEED_LINES__CLEARANCE:
				return getClearance();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case FrisketPackageImpl.WEED_LINES__AROUND:
				getAround().clear();
				getAround().addAll((Collection<? extends Element>)newValue);
				return;
			case FrisketPackageImpl.WEED_LINES__MARGIN:
				setMargin((Double)newValue);
				return;
			case FrisketPackageImpl.WEED_LINES__BETWEEN:
				setBetween((Boolean)newValue);
				return;
			case FrisketPackageImpl.WEED_LINES__SPACING:
				setSpacing((Double)newValue);
				return;
			case FrisketPackageImpl.WEED_LINES__CLEARANCE:
				setClearance((Double)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case FrisketPackageImpl.WEED_LINES__AROUND:
				getAround().clear();
				return;
			case FrisketPackageImpl.WEED_LINES__MARGIN:
				setMargin(MARGIN_EDEFAULT);
				return;
			case FrisketPackageImpl.WEED_LINES__BETWEEN:
				setBetween(BETWEEN_EDEFAULT);
				return;
			case FrisketPackageImpl.WEED_LINES__SPACING:
				setSpacing(SPACING_EDEFAULT);
				return;
			case FrisketPackageImpl.WEED_LINES__CLEARANCE:
				setClearance(CLEARANCE_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case FrisketPackageImpl.WEED_LINES__AROUND:
				return around != null && !around.isEmpty();
			case FrisketPackageImpl.WEED_LINES__MARGIN:
				return margin != MARGIN_EDEFAULT;
			case FrisketPackageImpl.WEED_LINES__BETWEEN:
				return between != BETWEEN_EDEFAULT;
			case FrisketPackageImpl.WEED_LINES__SPACING:
				return spacing != SPACING_EDEFAULT;
			case FrisketPackageImpl.WEED_LINES__CLEARANCE:
				return clearance != CLEARANCE_EDEFAULT;
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (margin: ");
		result.append(margin);
		result.append(", between: ");
		result.append(between);
		result.append(", spacing: ");
		result.append(spacing);
		result.append(", clearance: ");
		result.append(clearance);
		result.append(')');
		return result.toString();
	}

} //WeedLinesImpl
