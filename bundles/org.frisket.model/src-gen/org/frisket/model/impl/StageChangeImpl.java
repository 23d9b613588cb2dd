/**
 */
package org.frisket.model.impl;

import java.time.Instant;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.frisket.model.Stage;
import org.frisket.model.StageChange;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Stage Change</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.impl.StageChangeImpl#getAt <em>At</em>}</li>
 *   <li>{@link org.frisket.model.impl.StageChangeImpl#getWho <em>Who</em>}</li>
 *   <li>{@link org.frisket.model.impl.StageChangeImpl#getFrom <em>From</em>}</li>
 *   <li>{@link org.frisket.model.impl.StageChangeImpl#getTo <em>To</em>}</li>
 *   <li>{@link org.frisket.model.impl.StageChangeImpl#getRemark <em>Remark</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StageChangeImpl extends MinimalEObjectImpl.Container implements StageChange {
	/**
	 * The default value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected Instant at = AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getWho() <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWho()
	 * @generated
	 * @ordered
	 */
	protected static final String WHO_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWho() <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWho()
	 * @generated
	 * @ordered
	 */
	protected String who = WHO_EDEFAULT;

	/**
	 * The default value of the '{@link #getFrom() <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrom()
	 * @generated
	 * @ordered
	 */
	protected static final Stage FROM_EDEFAULT = Stage.ENQUIRY;

	/**
	 * The cached value of the '{@link #getFrom() <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrom()
	 * @generated
	 * @ordered
	 */
	protected Stage from = FROM_EDEFAULT;

	/**
	 * The default value of the '{@link #getTo() <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTo()
	 * @generated
	 * @ordered
	 */
	protected static final Stage TO_EDEFAULT = Stage.ENQUIRY;

	/**
	 * The cached value of the '{@link #getTo() <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTo()
	 * @generated
	 * @ordered
	 */
	protected Stage to = TO_EDEFAULT;

	/**
	 * The default value of the '{@link #getRemark() <em>Remark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRemark()
	 * @generated
	 * @ordered
	 */
	protected static final String REMARK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRemark() <em>Remark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRemark()
	 * @generated
	 * @ordered
	 */
	protected String remark = REMARK_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StageChangeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FrisketPackageImpl.Literals.STAGE_CHANGE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getAt() {
		return at;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAt(Instant newAt) {
		Instant oldAt = at;
		at = newAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.STAGE_CHANGE__AT, oldAt, at));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWho() {
		return who;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWho(String newWho) {
		String oldWho = who;
		who = newWho;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.STAGE_CHANGE__WHO, oldWho, who));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Stage getFrom() {
		return from;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrom(Stage newFrom) {
		Stage oldFrom = from;
		from = newFrom == null ? FROM_EDEFAULT : newFrom;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.STAGE_CHANGE__FROM, oldFrom, from));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Stage getTo() {
		return to;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTo(Stage newTo) {
		Stage oldTo = to;
		to = newTo == null ? TO_EDEFAULT : newTo;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.STAGE_CHANGE__TO, oldTo, to));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRemark() {
		return remark;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRemark(String newRemark) {
		String oldRemark = remark;
		remark = newRemark;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.STAGE_CHANGE__REMARK, oldRemark, remark));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FrisketPackageImpl.STAGE_CHANGE__AT:
				return getAt();
			case FrisketPackageImpl.STAGE_CHANGE__WHO:
				return getWho();
			case FrisketPackageImpl.STAGE_CHANGE__FROM:
				return getFrom();
			case FrisketPackageImpl.STAGE_CHANGE__TO:
				return getTo();
			case FrisketPackageImpl.STAGE_CHANGE__REMARK:
				return getRemark();
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
			case FrisketPackageImpl.STAGE_CHANGE__AT:
				setAt((Instant)newValue);
				return;
			case FrisketPackageImpl.STAGE_CHANGE__WHO:
				setWho((String)newValue);
				return;
			case FrisketPackageImpl.STAGE_CHANGE__FROM:
				setFrom((Stage)newValue);
				return;
			case FrisketPackageImpl.STAGE_CHANGE__TO:
				setTo((Stage)newValue);
				return;
			case FrisketPackageImpl.STAGE_CHANGE__REMARK:
				setRemark((String)newValue);
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
			case FrisketPackageImpl.STAGE_CHANGE__AT:
				setAt(AT_EDEFAULT);
				return;
			case FrisketPackageImpl.STAGE_CHANGE__WHO:
				setWho(WHO_EDEFAULT);
				return;
			case FrisketPackageImpl.STAGE_CHANGE__FROM:
				setFrom(FROM_EDEFAULT);
				return;
			case FrisketPackageImpl.STAGE_CHANGE__TO:
				setTo(TO_EDEFAULT);
				return;
			case FrisketPackageImpl.STAGE_CHANGE__REMARK:
				setRemark(REMARK_EDEFAULT);
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
			case FrisketPackageImpl.STAGE_CHANGE__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
			case FrisketPackageImpl.STAGE_CHANGE__WHO:
				return WHO_EDEFAULT == null ? who != null : !WHO_EDEFAULT.equals(who);
			case FrisketPackageImpl.STAGE_CHANGE__FROM:
				return from != FROM_EDEFAULT;
			case FrisketPackageImpl.STAGE_CHANGE__TO:
				return to != TO_EDEFAULT;
			case FrisketPackageImpl.STAGE_CHANGE__REMARK:
				return REMARK_EDEFAULT == null ? remark != null : !REMARK_EDEFAULT.equals(remark);
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
		result.append(" (at: ");
		result.append(at);
		result.append(", who: ");
		result.append(who);
		result.append(", from: ");
		result.append(from);
		result.append(", to: ");
		result.append(to);
		result.append(", remark: ");
		result.append(remark);
		result.append(')');
		return result.toString();
	}

} //StageChangeImpl
