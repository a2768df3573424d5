export { AccessRefused, can, requirePermission, type Actor, type StaffActor } from './actor';
export { PERMISSIONS, refusalWords, rolesWith, type Permission } from './permissions';
export { ROLES, isRole, roleWords, type Role } from './roles';
