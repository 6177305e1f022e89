package kerfwright.app.storage;

class PostgresDaysTest extends DaysContractTest {
  @Override
  Database open() throws Exception {
    return Database.server(PostgresOfTests.newDatabase());
  }
}
