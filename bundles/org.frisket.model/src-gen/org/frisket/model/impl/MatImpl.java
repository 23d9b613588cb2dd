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

import org.frisket.model.CornerJoin;
import org.frisket.model.Element;
import org.frisket.model.HoleRule;
import org.frisket.model.Mat;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Mat</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.impl.MatImpl#getBehind <em>Behind</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getDistance <em>Distance</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getCorners <em>Corners</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getMitreLimit <em>Mitre Limit</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getHoles <em>Holes</em>}</li>
 *   <li>{@link org.frisket.model.impl.MatImpl#getSmoothing <em>Smoothing</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MatImpl extends ElementImpl implements Mat {
	/**
	 * The cached value of the '{@link #getBehind() <em>Behind</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBehind()
	 * @generated
	 * @ordered
	 */
	protected EList<Element> behind;

	/**
	 * The default value of the '{@link #getDistance() <em>Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDistance()
	 * @generated
	 * @ordered
	 */
	protected static final double DISTANCE_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getDistance() <em>Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDistance()
	 * @generated
	 * @ordered
	 */
	protected double distance = DISTANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCorners() <em>Corners</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCorners()
	 * @generated
	 * @ordered
	 */
	protected static final CornerJoin CORNERS_EDEFAULT = CornerJoin.ROUND;

	/**
	 * The cached value of the '{@link #getCorners() <em>Corners</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCorners()
	 * @generated
	 * @ordered
	 */
	protected CornerJoin corners = CORNERS_EDEFAULT;

	/**
	 * The default value of the '{@link #getMitreLimit() <em>Mitre Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMitreLimit()
	 * @generated
	 * @ordered
	 */
	protected static final double MITRE_LIMIT_EDEFAULT = 4.0;

	/**
	 * The cached value of the '{@link #getMitreLimit() <em>Mitre Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMitreLimit()
	 * @generated
	 * @ordered
	 */
	protected double mitreLimit = MITRE_LIMIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getHoles() <em>Holes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHoles()
	 * @generated
	 * @ordered
	 */
	protected static final HoleRule HOLES_EDEFAULT = HoleRule.KEEP;

	/**
	 * The cached value of the '{@link #getHoles() <em>Holes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHoles()
	 * @generated
	 * @ordered
	 */
	protected HoleRule holes = HOLES_EDEFAULT;

	/**
	 * The default value of the '{@link #getSmoothing() <em>Smoothing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSmoothing()
	 * @generated
	 * @ordered
	 */
	protected static final double SMOOTHING_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getSmoothing() <em>Smoothing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSmoothing()
	 * @generated
	 * @ordered
	 */
	protected double smoothing = SMOOTHING_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MatImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FrisketPackageImpl.Literals.MAT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<Element> getBehind() {
		if (behind == null) {
			behind = new EObjectEList<Element>(Element.class, this, FrisketPackageImpl.MAT__BEHIND);
		}
		return behind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getDistance() {
		return distance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDistance(double newDistance) {
		double oldDistance = distance;
		distance = newDistance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__DISTANCE, oldDistance, distance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CornerJoin getCorners() {
		return corners;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCorners(CornerJoin newCorners) {
		CornerJoin oldCorners = corners;
		corners = newCorners == null ? CORNERS_EDEFAULT : newCorners;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__CORNERS, oldCorners, corners));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getMitreLimit() {
		return mitreLimit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMitreLimit(double newMitreLimit) {
		double oldMitreLimit = mitreLimit;
		mitreLimit = newMitreLimit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__MITRE_LIMIT, oldMitreLimit, mitreLimit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public HoleRule getHoles() {
		return holes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHoles(HoleRule newHoles) {
		HoleRule oldHoles = holes;
		holes = newHoles == null ? HOLES_EDEFAULT : newHoles;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__HOLES, oldHoles, holes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getSmoothing() {
		return smoothing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSmoothing(double newSmoothing) {
		double oldSmoothing = smoothing;
		smoothing = newSmoothing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.MAT__SMOOTHING, oldSmoothing, smoothing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FrisketPackageImpl.MAT__BEHIND:
				return getBehind();
			case FrisketPackageImpl.MAT__DISTANCE:
				return getDistance();
			case FrisketPackageImpl.MAT__CORNERS:
				return getCorners();
			case FrisketPackageImpl.MAT__MITRE_LIMIT:
				return getMitreLimit();
			case FrisketPackageImpl.MAT__HOLES:
				return getHoles();
			case FrisketPackageImpl.MAT__SMOOTHING:
				return getSmoothing();
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
			case FrisketPackageImpl.MAT__BEHIND:
				getBehind().clear();
				getBehind().addAll((Collection<? extends Element>)newValue);
				return;
			case FrisketPackageImpl.MAT__DISTANCE:
				setDistance((Double)newValue);
				return;
			case FrisketPackageImpl.MAT__CORNERS:
				setCorners((CornerJoin)newValue);
				return;
			case FrisketPackageImpl.MAT__MITRE_LIMIT:
				setMitreLimit((Double)newValue);
				return;
			case FrisketPackageImpl.MAT__HOLES:
				setHoles((HoleRule)newValue);
				return;
			case FrisketPackageImpl.MAT__SMOOTHING:
				setSmoothing((Double)newValue);
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
			case FrisketPackageImpl.MAT__BEHIND:
				getBehind().clear();
				return;
			case FrisketPackageImpl.MAT__DISTANCE:
				setDistance(DISTANCE_EDEFAULT);
				return;
			case FrisketPackageImpl.MAT__CORNERS:
				setCorners(CORNERS_EDEFAULT);
				return;
			case FrisketPackageImpl.MAT__MITRE_LIMIT:
				setMitreLimit(MITRE_LIMIT_EDEFAULT);
				return;
			case FrisketPackageImpl.MAT__HOLES:
				setHoles(HOLES_EDEFAULT);
				return;
			case FrisketPackageImpl.MAT__SMOOTHING:
				setSmoothing(SMOOTHING_EDEFAULT);
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
			case FrisketPackageImpl.MAT__BEHIND:
				return behind != null && !behind.isEmpty();
			case FrisketPackageImpl.MAT__DISTANCE:
				return distance != DISTANCE_EDEFAULT;
			case FrisketPackageImpl.MAT__CORNERS:
				return corners != CORNERS_EDEFAULT;
			case FrisketPackageImpl.MAT__MITRE_LIMIT:
				return mitreLimit != MITRE_LIMIT_EDEFAULT;
			case FrisketPackageImpl.MAT__HOLES:
				return holes != HOLES_EDEFAULT;
			case FrisketPackageImpl.MAT__SMOOTHING:
				return smoothing != SMOOTHING_EDEFAULT;
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
		result.append(" (distance: ");
		result.append(distance);
		result.append(", corners: ");
		result.append(corners);
		result.append(", mitreLimit: ");
		result.append(mitreLimit);
		result.append(", holes: ");
		result.append(holes);
		result.append(", smoothing: ");
		result.append(smoothing);
		result.append(')');
		return result.toString();
	}

} //MatImpl
