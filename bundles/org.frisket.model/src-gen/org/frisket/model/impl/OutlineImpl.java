/**
 */
package org.frisket.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.frisket.model.Outline;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Outline</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.impl.OutlineImpl#getPathData <em>Path Data</em>}</li>
 *   <li>{@link org.frisket.model.impl.OutlineImpl#getCornerRadius <em>Corner Radius</em>}</li>
 * </ul>
 *
 * @generated
 */
public class OutlineImpl extends ElementImpl implements Outline {
	/**
	 * The default value of the '{@link #getPathData() <em>Path Data</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPathData()
	 * @generated
	 * @ordered
	 */
	protected static final String PATH_DATA_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPathData() <em>Path Data</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPathData()
	 * @generated
	 * @ordered
	 */
	protected String pathData = PATH_DATA_EDEFAULT;

	/**
	 * The default value of the '{@link #getCornerRadius() <em>Corner Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCornerRadius()
	 * @generated
	 * @ordered
	 */
	protected static final double CORNER_RADIUS_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getCornerRadius() <em>Corner Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCornerRadius()
	 * @generated
	 * @ordered
	 */
	protected double cornerRadius = CORNER_RADIUS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected OutlineImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FrisketPackageImpl.Literals.OUTLINE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPathData() {
		return pathData;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPathData(String newPathData) {
		String oldPathData = pathData;
		pathData = newPathData;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.OUTLINE__PATH_DATA, oldPathData, pathData));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getCornerRadius() {
		return cornerRadius;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCornerRadius(double newCornerRadius) {
		double oldCornerRadius = cornerRadius;
		cornerRadius = newCornerRadius;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.OUTLINE__CORNER_RADIUS, oldCornerRadius, cornerRadius));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FrisketPackageImpl.OUTLINE__PATH_DATA:
				return getPathData();
			case FrisketPackageImpl.OUTLINE__CORNER_RADIUS:
				return getCornerRadius();
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
			case FrisketPackageImpl.OUTLINE__PATH_DATA:
				setPathData((String)newValue);
				return;
			case FrisketPackageImpl.OUTLINE__CORNER_RADIUS:
				setCornerRadius((Double)newValue);
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
			case FrisketPackageImpl.OUTLINE__PATH_DATA:
				setPathData(PATH_DATA_EDEFAULT);
				return;
			case FrisketPackageImpl.OUTLINE__CORNER_RADIUS:
				setCornerRadius(CORNER_RADIUS_EDEFAULT);
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
			case FrisketPackageImpl.OUTLINE__PATH_DATA:
				return PATH_DATA_EDEFAULT == null ? pathData != null : !PATH_DATA_EDEFAULT.equals(pathData);
			case FrisketPackageImpl.OUTLINE__CORNER_RADIUS:
				return cornerRadius != CORNER_RADIUS_EDEFAULT;
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
		result.append(" (pathData: ");
		result.append(pathData);
		result.append(", cornerRadius: ");
		result.append(cornerRadius);
		result.append(')');
		return result.toString();
	}

} //OutlineImpl
