package kerfwright.app.storage;

class PostgresRunTest extends RunContractTest {
  @Override
  Database open() throws Exception {
    return Database.server(PostgresOfTests.newDatabase());
  }
}
