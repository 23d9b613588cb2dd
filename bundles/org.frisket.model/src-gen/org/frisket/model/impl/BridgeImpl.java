/**
 */
package org.frisket.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.frisket.model.Bridge;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Bridge</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.impl.BridgeImpl#getOne <em>One</em>}</li>
 *   <li>{@link org.frisket.model.impl.BridgeImpl#getOther <em>Other</em>}</li>
 *   <li>{@link org.frisket.model.impl.BridgeImpl#getWidth <em>Width</em>}</li>
 *   <li>{@link org.frisket.model.impl.BridgeImpl#isPlaced <em>Placed</em>}</li>
 *   <li>{@link org.frisket.model.impl.BridgeImpl#getOneX <em>One X</em>}</li>
 *   <li>{@link org.frisket.model.impl.BridgeImpl#getOneY <em>One Y</em>}</li>
 *   <li>{@link org.frisket.model.impl.BridgeImpl#getOtherX <em>Other X</em>}</li>
 *   <li>{@link org.frisket.model.impl.BridgeImpl#getOtherY <em>Other Y</em>}</li>
 * </ul>
 *
 * @generated
 */
public class BridgeImpl extends MinimalEObjectImpl.Container implements Bridge {
	/**
	 * The default value of the '{@link #getOne() <em>One</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOne()
	 * @generated
	 * @ordered
	 */
	protected static final int ONE_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getOne() <em>One</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOne()
	 * @generated
	 * @ordered
	 */
	protected int one = ONE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOther() <em>Other</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOther()
	 * @generated
	 * @ordered
	 */
	protected static final int OTHER_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getOther() <em>Other</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOther()
	 * @generated
	 * @ordered
	 */
	protected int other = OTHER_EDEFAULT;

	/**
	 * The default value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected static final double WIDTH_EDEFAULT = 1.0;

	/**
	 * The cached value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected double width = WIDTH_EDEFAULT;

	/**
	 * The default value of the '{@link #isPlaced() <em>Placed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isPlaced()
	 * @generated
	 * @ordered
	 */
	protected static final boolean PLACED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isPlaced() <em>Placed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isPlaced()
	 * @generated
	 * @ordered
	 */
	protected boolean placed = PLACED_EDEFAULT;

	/**
	 * The default value of the '{@link #getOneX() <em>One X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOneX()
	 * @generated
	 * @ordered
	 */
	protected static final double ONE_X_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getOneX() <em>One X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOneX()
	 * @generated
	 * @ordered
	 */
	protected double oneX = ONE_X_EDEFAULT;

	/**
	 * The default value of the '{@link #getOneY() <em>One Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOneY()
	 * @generated
	 * @ordered
	 */
	protected static final double ONE_Y_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getOneY() <em>One Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOneY()
	 * @generated
	 * @ordered
	 */
	protected double oneY = ONE_Y_EDEFAULT;

	/**
	 * The default value of the '{@link #getOtherX() <em>Other X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOtherX()
	 * @generated
	 * @ordered
	 */
	protected static final double OTHER_X_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getOtherX() <em>Other X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOtherX()
	 * @generated
	 * @ordered
	 */
	protected double otherX = OTHER_X_EDEFAULT;

	/**
	 * The default value of the '{@link #getOtherY() <em>Other Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOtherY()
	 * @generated
	 * @ordered
	 */
	protected static final double OTHER_Y_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getOtherY() <em>Other Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOtherY()
	 * @generated
	 * @ordered
	 */
	protected double otherY = OTHER_Y_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected BridgeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FrisketPackageImpl.Literals.BRIDGE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getOne() {
		return one;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOne(int newOne) {
		int oldOne = one;
		one = newOne;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.BRIDGE__ONE, oldOne, one));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getOther() {
		return other;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOther(int newOther) {
		int oldOther = other;
		other = newOther;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.BRIDGE__OTHER, oldOther, other));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getWidth() {
		return width;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWidth(double newWidth) {
		double oldWidth = width;
		width = newWidth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.BRIDGE__WIDTH, oldWidth, width));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isPlaced() {
		return placed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlaced(boolean newPlaced) {
		boolean oldPlaced = placed;
		placed = newPlaced;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.BRIDGE__PLACED, oldPlaced, placed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getOneX() {
		return oneX;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOneX(double newOneX) {
		double oldOneX = oneX;
		oneX = newOneX;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.BRIDGE__ONE_X, oldOneX, oneX));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getOneY() {
		return oneY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOneY(double newOneY) {
		double oldOneY = oneY;
		oneY = newOneY;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.BRIDGE__ONE_Y, oldOneY, oneY));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getOtherX() {
		return otherX;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOtherX(double newOtherX) {
		double oldOtherX = otherX;
		otherX = newOtherX;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.BRIDGE__OTHER_X, oldOtherX, otherX));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getOtherY() {
		return otherY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOtherY(double newOtherY) {
		double oldOtherY = otherY;
		otherY = newOtherY;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.BRIDGE__OTHER_Y, oldOtherY, otherY));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FrisketPackageImpl.BRIDGE__ONE:
				return getOne();
			case FrisketPackageImpl.BRIDGE__OTHER:
				return getOther();
			case FrisketPackageImpl.BRIDGE__WIDTH:
				return getWidth();
			case FrisketPackageImpl.BRIDGE__PLACED:
				return isPlaced();
			case FrisketPackageImpl.BRIDGE__ONE_X:
				return getOneX();
			case FrisketPackageImpl.BRIDGE__ONE_Y:
				return getOneY();
			case FrisketPackageImpl.BRIDGE__OTHER_X:
				return getOtherX();
			case FrisketPackageImpl.BRIDGE__OTHER_Y:
				return getOtherY();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case FrisketPackageImpl.BRIDGE__ONE:
				setOne((Integer)newValue);
				return;
			case FrisketPackageImpl.BRIDGE__OTHER:
				setOther((Integer)newValue);
				return;
			case FrisketPackageImpl.BRIDGE__WIDTH:
				setWidth((Double)newValue);
				return;
			case FrisketPackageImpl.BRIDGE__PLACED:
				setPlaced((Boolean)newValue);
				return;
			case FrisketPackageImpl.BRIDGE__ONE_X:
				setOneX((Double)newValue);
				return;
			case FrisketPackageImpl.BRIDGE__ONE_Y:
				setOneY((Double)newValue);
				return;
			case FrisketPackageImpl.BRIDGE__OTHER_X:
				setOtherX((Double)newValue);
				return;
			case FrisketPackageImpl.BRIDGE__OTHER_Y:
				setOtherY((Double)newValue);
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
			case FrisketPackageImpl.BRIDGE__ONE:
				setOne(ONE_EDEFAULT);
				return;
			case FrisketPackageImpl.BRIDGE__OTHER:
				setOther(OTHER_EDEFAULT);
				return;
			case FrisketPackageImpl.BRIDGE__WIDTH:
				setWidth(WIDTH_EDEFAULT);
				return;
			case FrisketPackageImpl.BRIDGE__PLACED:
				setPlaced(PLACED_EDEFAULT);
				return;
			case FrisketPackageImpl.BRIDGE__ONE_X:
				setOneX(ONE_X_EDEFAULT);
				return;
			case FrisketPackageImpl.BRIDGE__ONE_Y:
				setOneY(ONE_Y_EDEFAULT);
				return;
			case FrisketPackageImpl.BRIDGE__OTHER_X:
				setOtherX(OTHER_X_EDEFAULT);
				return;
			case FrisketPackageImpl.BRIDGE__OTHER_Y:
				setOtherY(OTHER_Y_EDEFAULT);
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
			case FrisketPackageImpl.BRIDGE__ONE:
				return one != ONE_EDEFAULT;
			case FrisketPackageImpl.BRIDGE__OTHER:
				return other != OTHER_EDEFAULT;
			case FrisketPackageImpl.BRIDGE__WIDTH:
				return width != WIDTH_EDEFAULT;
			case FrisketPackageImpl.BRIDGE__PLACED:
				return placed != PLACED_EDEFAULT;
			case FrisketPackageImpl.BRIDGE__ONE_X:
				return oneX != ONE_X_EDEFAULT;
			case FrisketPackageImpl.BRIDGE__ONE_Y:
				return oneY != ONE_Y_EDEFAULT;
			case FrisketPackageImpl.BRIDGE__OTHER_X:
				return otherX != OTHER_X_EDEFAULT;
			case FrisketPackageImpl.BRIDGE__OTHER_Y:
				return otherY != OTHER_Y_EDEFAULT;
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
		result.append(" (one: ");
		result.append(one);
		result.append(", other: ");
		result.append(other);
		result.append(", width: ");
		result.append(width);
		result.append(", placed: ");
		result.append(placed);
		result.append(", oneX: ");
		result.append(oneX);
		result.append(", oneY: ");
		result.append(oneY);
		result.append(", otherX: ");
		result.append(otherX);
		result.append(", otherY: ");
		result.append(otherY);
		result.append(')');
		return result.toString();
	}

} //BridgeImpl
