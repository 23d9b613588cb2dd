/**
 */
package org.frisket.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.frisket.model.MarkKind;
import org.frisket.model.RegisterMark;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Register Mark</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.impl.RegisterMarkImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.frisket.model.impl.RegisterMarkImpl#getX <em>X</em>}</li>
 *   <li>{@link org.frisket.model.impl.RegisterMarkImpl#getY <em>Y</em>}</li>
 *   <li>{@link org.frisket.model.impl.RegisterMarkImpl#getTurn <em>Turn</em>}</li>
 *   <li>{@link org.frisket.model.impl.RegisterMarkImpl#getSize <em>Size</em>}</li>
 *   <li>{@link org.frisket.model.impl.RegisterMarkImpl#getWeight <em>Weight</em>}</li>
 *   <li>{@link org.frisket.model.impl.RegisterMarkImpl#getQuiet <em>Quiet</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RegisterMarkImpl extends MinimalEObjectImpl.Container implements RegisterMark {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final MarkKind KIND_EDEFAULT = MarkKind.DISC;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected MarkKind kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getX() <em>X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getX()
	 * @generated
	 * @ordered
	 */
	protected static final double X_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getX() <em>X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getX()
	 * @generated
	 * @ordered
	 */
	protected double x = X_EDEFAULT;

	/**
	 * The default value of the '{@link #getY() <em>Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getY()
	 * @generated
	 * @ordered
	 */
	protected static final double Y_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getY() <em>Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getY()
	 * @generated
	 * @ordered
	 */
	protected double y = Y_EDEFAULT;

	/**
	 * The default value of the '{@link #getTurn() <em>Turn</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTurn()
	 * @generated
	 * @ordered
	 */
	protected static final double TURN_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getTurn() <em>Turn</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTurn()
	 * @generated
	 * @ordered
	 */
	protected double turn = TURN_EDEFAULT;

	/**
	 * The default value of the '{@link #getSize() <em>Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSize()
	 * @generated
	 * @ordered
	 */
	protected static final double SIZE_EDEFAULT = 5.0;

	/**
	 * The cached value of the '{@link #getSize() <em>Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSize()
	 * @generated
	 * @ordered
	 */
	protected double size = SIZE_EDEFAULT;

	/**
	 * The default value of the '{@link #getWeight() <em>Weight</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWeight()
	 * @generated
	 * @ordered
	 */
	protected static final double WEIGHT_EDEFAULT = 1.0;

	/**
	 * The cached value of the '{@link #getWeight() <em>Weight</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWeight()
	 * @generated
	 * @ordered
	 */
	protected double weight = WEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getQuiet() <em>Quiet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuiet()
	 * @generated
	 * @ordered
	 */
	protected static final double QUIET_EDEFAULT = 3.0;

	/**
	 * The cached value of the '{@link #getQuiet() <em>Quiet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuiet()
	 * @generated
	 * @ordered
	 */
	protected double quiet = QUIET_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RegisterMarkImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FrisketPackageImpl.Literals.REGISTER_MARK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MarkKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(MarkKind newKind) {
		MarkKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.REGISTER_MARK__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getX() {
		return x;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setX(double newX) {
		double oldX = x;
		x = newX;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.REGISTER_MARK__X, oldX, x));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getY() {
		return y;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setY(double newY) {
		double oldY = y;
		y = newY;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.REGISTER_MARK__Y, oldY, y));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getTurn() {
		return turn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTurn(double newTurn) {
		double oldTurn = turn;
		turn = newTurn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.REGISTER_MARK__TURN, oldTurn, turn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getSize() {
		return size;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSize(double newSize) {
		double oldSize = size;
		size = newSize;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.REGISTER_MARK__SIZE, oldSize, size));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getWeight() {
		return weight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWeight(double newWeight) {
		double oldWeight = weight;
		weight = newWeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.REGISTER_MARK__WEIGHT, oldWeight, weight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getQuiet() {
		return quiet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setQuiet(double newQuiet) {
		double oldQuiet = quiet;
		quiet = newQuiet;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.REGISTER_MARK__QUIET, oldQuiet, quiet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FrisketPackageImpl.REGISTER_MARK__KIND:
				return getKind();
			case FrisketPackageImpl.REGISTER_MARK__X:
				return getX();
			case FrisketPackageImpl.REGISTER_MARK__Y:
				return getY();
			case FrisketPackageImpl.REGISTER_MARK__TURN:
				return getTurn();
			case FrisketPackageImpl.REGISTER_MARK__SIZE:
				return getSize();
			case FrisketPackageImpl.REGISTER_MARK__WEIGHT:
				return getWeight();
			case FrisketPackageImpl.REGISTER_MARK__QUIET:
				return getQuiet();
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
			case FrisketPackageImpl.REGISTER_MARK__KIND:
				setKind((MarkKind)newValue);
				return;
			case FrisketPackageImpl.REGISTER_MARK__X:
				setX((Double)newValue);
				return;
			case FrisketPackageImpl.REGISTER_MARK__Y:
				setY((Double)newValue);
				return;
			case FrisketPackageImpl.REGISTER_MARK__TURN:
				setTurn((Double)newValue);
				return;
			case FrisketPackageImpl.REGISTER_MARK__SIZE:
				setSize((Double)newValue);
				return;
			case FrisketPackageImpl.REGISTER_MARK__WEIGHT:
				setWeight((Double)newValue);
				return;
			case FrisketPackageImpl.REGISTER_MARK__QUIET:
				setQuiet((Double)newValue);
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
			case FrisketPackageImpl.REGISTER_MARK__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case FrisketPackageImpl.REGISTER_MARK__X:
				setX(X_EDEFAULT);
				return;
			case FrisketPackageImpl.REGISTER_MARK__Y:
				setY(Y_EDEFAULT);
				return;
			case FrisketPackageImpl.REGISTER_MARK__TURN:
				setTurn(TURN_EDEFAULT);
				return;
			case FrisketPackageImpl.REGISTER_MARK__SIZE:
				setSize(SIZE_EDEFAULT);
				return;
			case FrisketPackageImpl.REGISTER_MARK__WEIGHT:
				setWeight(WEIGHT_EDEFAULT);
				return;
			case FrisketPackageImpl.REGISTER_MARK__QUIET:
				setQuiet(QUIET_EDEFAULT);
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
			case FrisketPackageImpl.REGISTER_MARK__KIND:
				return kind != KIND_EDEFAULT;
			case FrisketPackageImpl.REGISTER_MARK__X:
				return x != X_EDEFAULT;
			case FrisketPackageImpl.REGISTER_MARK__Y:
				return y != Y_EDEFAULT;
			case FrisketPackageImpl.REGISTER_MARK__TURN:
				return turn != TURN_EDEFAULT;
			case FrisketPackageImpl.REGISTER_MARK__SIZE:
				return size != SIZE_EDEFAULT;
			case FrisketPackageImpl.REGISTER_MARK__WEIGHT:
				return weight != WEIGHT_EDEFAULT;
			case FrisketPackageImpl.REGISTER_MARK__QUIET:
				return quiet != QUIET_EDEFAULT;
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
		result.append(" (kind: ");
		result.append(kind);
		result.append(", x: ");
		result.append(x);
		result.append(", y: ");
		result.append(y);
		result.append(", turn: ");
		result.append(turn);
		result.append(", size: ");
		result.append(size);
		result.append(", weight: ");
		result.append(weight);
		result.append(", quiet: ");
		result.append(quiet);
		result.append(')');
		return result.toString();
	}

} //RegisterMarkImpl
