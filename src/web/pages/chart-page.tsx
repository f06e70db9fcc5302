import { ChartEntry } from '../chart/chart-entry.tsx';
import { openTeacherPage } from '../teacher/open-teacher-page.tsx';

/** Chart entry: what did the groups write on paper? */
void openTeacherPage(ChartEntry, 'chart.page');
