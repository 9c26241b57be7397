// The table: one picture laid out beside what can be done with it. Everything done here is done to
// the picture, so it shows on every panel.
#pragma once

#include <QThreadPool>
#include <QWidget>

#include "app/ui/compose/desk.h"
#include "app/ui/kit/button.h"
#include "app/ui/kit/rover.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/picture/picture_sheet.h"

class QVBoxLayout;

namespace wainscot::ui {

class PictureTable : public QWidget {
    Q_OBJECT
public:
    PictureTable(Session& session, Desk& desk, QWidget* parent = nullptr);
    ~PictureTable() override;

    void open(PieceId piece);
    void close();
    void refresh(); // after a change of the book
    void waitForPicture(); // until it is read
    [[nodiscard]] PictureSheet& sheet() { return *m_sheet; }
    [[nodiscard]] PieceId piece() const { return m_piece; }
    [[nodiscard]] QString facts() const { return m_facts->text(); } // what the paper will get

Q_SIGNALS:
    void closed();
    void said(const QString& sentence);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    class Result;
    QLayout* makeHead();
    QWidget* makeNote();
    QLayout* makeTasks();
    QLayout* makeCovers();
    Button* addRow(QLayout* layout, const QString& text, const QString& key, Icon icon);
    void connectSheet();
    void setTask(PictureSheet::Task task);
    void refreshNote();
    void read(const Picture& picture);
    [[nodiscard]] const Picture* picture() const;
    [[nodiscard]] int gestureFor(int handle);

    Session& m_session;
    Desk& m_desk;
    PieceId m_piece;
    PictureId m_picture;
    int m_orientation = 1; // of the copy on the sheet
    QImage m_upright;
    QThreadPool m_reader;
    int m_reading = 0; // counts what was asked for, so that a late answer is dropped
    int m_handle = -1;
    int m_gesture = 0;

    Label* m_heading;
    PictureSheet* m_sheet;
    Label* m_help;
    Label* m_facts;
    Result* m_result;
    QVector<Button*> m_tasks;
    QVector<Button*> m_covers;
    Button* m_oval = nullptr;
    QWidget* m_coverRow = nullptr;
    Button* m_turnRight = nullptr;
    Button* m_turnLeft = nullptr;
    Button* m_even = nullptr;
    Button* m_asItCame = nullptr;
    Button* m_add = nullptr;
    Button* m_remove = nullptr;
    Rover* m_taskRover;
    Rover* m_coverRover;
    Rover* m_rowRover;
};

} // namespace wainscot::ui
