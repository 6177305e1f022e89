package kerfwright.app.storage;

class PostgresLessonsTest extends LessonsContractTest {
  @Override
  Database open() throws Exception {
    return Database.server(PostgresOfTests.newDatabase());
  }
}
