package kerfwright.app.storage;

class PostgresLoadTest extends LoadContractTest {
  @Override
  Database open() throws Exception {
    return Database.server(PostgresOfTests.newDatabase());
  }
}
