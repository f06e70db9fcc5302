import { AtWork } from '../teacher/at-work.tsx';
import { openTeacherPage } from '../teacher/open-teacher-page.tsx';

/** The teacher's page: how is the class, and whom should I go to? */
void openTeacherPage(AtWork, 'teacher.page');
